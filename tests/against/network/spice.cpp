// SPDX-License-Identifier: GPL-3.0-or-later
// Netlists and ngspice's printed answers.
#include "against/network/spice.h"

#include <cstdio>
#include <numbers>
#include <sstream>

#include "support/spice_process.h"

namespace cordreach::testing {
namespace {

constexpr double kFrequencyHz = 60.0;

std::string name(char kind, std::size_t building, std::size_t first, std::size_t second, std::string end) {
  return std::string(1, kind) + std::to_string(building) + "_" + std::to_string(first) + "_" + std::to_string(second) +
         "_" + std::move(end);
}

std::string number(double value) {
  char text[40];
  std::snprintf(text, sizeof text, "%.17g", value);
  return text;
}

// Lines of the form `name = re,im`; everything else ngspice prints is passed over.
std::map<std::string, std::complex<double>> readAnswers(const std::string& printed) {
  std::map<std::string, std::complex<double>> answers;
  std::istringstream in(printed);
  std::string line;
  while (std::getline(in, line)) {
    char node[64];
    double re = 0;
    double im = 0;
    if (std::sscanf(line.c_str(), " %63[a-z0-9_] = %lf,%lf", node, &re, &im) == 3) answers[node] = {re, im};
  }
  return answers;
}

}  // namespace

std::string spicePole(std::size_t building, std::size_t circuit, std::size_t node, std::size_t pole) {
  return name('c', building, circuit, node, std::to_string(pole));
}

std::string spiceNeutral(std::size_t building, std::size_t circuit, std::size_t node) {
  return name('c', building, circuit, node, "n");
}

std::string spiceBus(std::size_t building, std::size_t panel, std::size_t phase) {
  return name('p', building, panel, phase, "b");
}

std::string spiceBusNeutral(std::size_t building, std::size_t panel) { return name('p', building, panel, 0, "n"); }

void Netlist::impedance(const std::string& from, const std::string& to, std::complex<double> ohm) {
  const std::string part = std::to_string(m_parts++);
  const std::string between = ohm.imag() == 0.0 ? to : "x" + part;
  const std::string ends = from + " " + between;
  m_text +=
      ohm.real() == 0.0 ? "V" + part + " " + ends + " 0\n" : "R" + part + " " + ends + " " + number(ohm.real()) + "\n";
  if (ohm.imag() == 0.0) return;
  const double radPerS = 2.0 * std::numbers::pi * kFrequencyHz;
  m_text += ohm.imag() > 0 ? "L" + part + " " + between + " " + to + " " + number(ohm.imag() / radPerS) + "\n"
                           : "C" + part + " " + between + " " + to + " " + number(-1.0 / (ohm.imag() * radPerS)) + "\n";
}

void Netlist::panel(std::size_t building, std::size_t index, const network::Network& network) {
  const network::Panel& panel = network.panels[index];
  const std::size_t phases = panel.fedFrom ? panel.feedPhases.size() : panel.sourceV.size();
  for (std::size_t i = 0; i < phases; ++i) {
    std::string from;
    if (panel.fedFrom) {
      from = spiceBus(building, *panel.fedFrom, panel.feedPhases[i]);
    } else {
      from = "s" + std::to_string(m_parts);
      m_text += "VS" + std::to_string(m_parts++) + " " + from + " 0 DC 0 AC " + number(std::abs(panel.sourceV[i])) +
                " " + number(std::arg(panel.sourceV[i]) * 180.0 / std::numbers::pi) + "\n";
    }
    impedance(from, spiceBus(building, index, i), panel.feeder.poleOhm);
  }
  const std::string neutral = panel.fedFrom ? spiceBusNeutral(building, *panel.fedFrom) : "0";
  impedance(neutral, spiceBusNeutral(building, index), panel.feeder.neutralOhm);
}

void Netlist::circuit(std::size_t building, std::size_t index, const network::Network& network,
                      const network::CircuitSolution& solution) {
  const network::Circuit& circuit = network.circuits[index];
  for (std::size_t n = 0; n < circuit.nodes.size(); ++n) {
    const network::Node& node = circuit.nodes[n];
    for (std::size_t p = 0; p < circuit.phases.size(); ++p) {
      const std::string from =
          n == 0 ? spiceBus(building, circuit.panel, circuit.phases[p]) : spicePole(building, index, node.parent, p);
      impedance(from, spicePole(building, index, n, p), node.branch.poleOhm);
    }
    const std::string neutral =
        n == 0 ? spiceBusNeutral(building, circuit.panel) : spiceNeutral(building, index, node.parent);
    impedance(neutral, spiceNeutral(building, index, n), node.branch.neutralOhm);
  }
  for (std::size_t i = 0; i < circuit.loads.size(); ++i) {
    const network::Load& load = circuit.loads[i];
    const std::string to =
        load.toPole ? spicePole(building, index, load.node, *load.toPole) : spiceNeutral(building, index, load.node);
    impedance(spicePole(building, index, load.node, load.pole), to, 1.0 / solution.loads[i].point.admittanceS);
  }
}

void Netlist::add(std::size_t building, const network::Network& network, const network::Solution& solution) {
  for (std::size_t i = 0; i < network.panels.size(); ++i) panel(building, i, network);
  for (std::size_t i = 0; i < network.circuits.size(); ++i) circuit(building, i, network, solution.circuits[i]);
}

std::map<std::string, std::complex<double>> Netlist::run() const {
  return readAnswers(spiceOutput("buildings\n" + m_text +
                                 ".control\nset numdgt=12\nset width=512\nac lin 1 60 60\nprint all\nquit\n.endc\n"
                                 ".end\n"));
}

}  // namespace cordreach::testing
