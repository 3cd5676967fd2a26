// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/start_scene.h"

#include "base/contract.h"
#include "physics/load_impedance.h"

namespace cordreach::study {

namespace {

using network::Phasor;

constexpr double kProbeOhm = 2.0;  // any will do in a linear network; of the size of a starting machine

// Every load as the impedance it was solved at; what draws nothing is left out.
network::Network frozen(const network::Network& network, const network::Solution& solution) {
  network::Network linear = network;
  for (std::size_t c = 0; c < linear.circuits.size(); ++c) {
    linear.circuits[c].loads.clear();
    for (std::size_t i = 0; i < network.circuits[c].loads.size(); ++i) {
      network::Load load = network.circuits[c].loads[i];
      const network::LoadSolution& solved = solution.circuits[c].loads[i];
      const bool draws = std::abs(solved.currentA) > 1e-9 && std::abs(solved.voltageV) > 1e-9;
      constexpr double kNothingOhm = 1e9;
      const Phasor ohm = draws ? solved.voltageV / solved.currentA : Phasor(kNothingOhm);
      load.law = physics::makeImpedanceLaw({std::max(0.0, ohm.real()), ohm.imag()});
      linear.circuits[c].loads.push_back(std::move(load));
    }
  }
  return linear;
}

Phasor nodeVoltage(const network::Solution& solution, const Tap& tap) {
  const auto& poles = solution.circuits[tap.circuit].nodeV[tap.node];
  return tap.toPole ? poles[tap.pole] - poles[*tap.toPole] : poles[tap.pole];
}

Phasor busVoltage(const network::Network& network, const network::Solution& solution, const Tap& tap) {
  const network::Circuit& circuit = network.circuits[tap.circuit];
  const auto& bus = solution.panelV[circuit.panel];
  return bus[circuit.phases[tap.pole]] - (tap.toPole ? bus[circuit.phases[*tap.toPole]] : Phasor{});
}

}  // namespace

StartScene::StartScene(const PanelState& state, const Tap& tap, std::size_t load)
    : m_tap(tap), m_network(frozen(state.scene().network, state.likely().cold)) {
  auto& loads = m_network.circuits[m_tap.circuit].loads;
  CORDREACH_EXPECTS(load < loads.size());
  network::Load machine = std::move(loads[load]);
  loads.erase(loads.begin() + static_cast<std::ptrdiff_t>(load));
  m_without = network::solve(m_network);
  machine.law = physics::makeImpedanceLaw(kProbeOhm);
  loads.push_back(std::move(machine));
  m_probed = network::solve(m_network);
  m_probeA = m_probed.circuits[m_tap.circuit].loads[loads.size() - 1].currentA;
  const Phasor open = nodeVoltage(m_without, m_tap);
  m_phase = std::abs(open) > 0.0 ? open / std::abs(open) : Phasor(1.0);
  const Phasor dropped = open - nodeVoltage(m_probed, m_tap);
  m_supply.openV = std::abs(open);
  m_supply.ohm = std::abs(m_probeA) > 0.0 ? dropped / m_probeA : Phasor{};
}

Phasor StartScene::share(Phasor currentA) const {
  return std::abs(m_probeA) > 0.0 ? currentA * m_phase / m_probeA : Phasor{};
}

double StartScene::voltageV(const Tap& tap, Phasor currentA) const {
  const Phasor without = nodeVoltage(m_without, tap);
  return std::abs(without + share(currentA) * (nodeVoltage(m_probed, tap) - without));
}

double StartScene::busV(const Tap& tap, Phasor currentA) const {
  const Phasor without = busVoltage(m_network, m_without, tap);
  return std::abs(without + share(currentA) * (busVoltage(m_network, m_probed, tap) - without));
}

Phasor StartScene::othersA(Phasor currentA) const {
  const auto& loads = m_network.circuits[m_tap.circuit].loads;
  Phasor sum{};
  for (std::size_t i = 0; i + 1 < loads.size(); ++i) {
    const Phasor without = m_without.circuits[m_tap.circuit].loads[i].currentA;
    const Phasor probed = m_probed.circuits[m_tap.circuit].loads[i].currentA;
    const Phasor now = without + share(currentA) * (probed - without);
    if (loads[i].pole == m_tap.pole) sum += now;
    if (loads[i].toPole == m_tap.pole) sum -= now;
  }
  return sum / m_phase;
}

}  // namespace cordreach::study
