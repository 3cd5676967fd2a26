// SPDX-License-Identifier: GPL-3.0-or-later
// Currents summed from the loads to the sources; S = V I*, lost in a bundle: zp |I|² a pole and zn |sum I|².
#include "network/power_balance.h"

#include <array>

#include "base/contract.h"

namespace cordreach::network {
namespace {

using Currents = std::array<Phasor, 3>;

Phasor lostVa(const Branch& branch, const Currents& currents) {
  Phasor lost = branch.neutralOhm * std::norm(currents[0] + currents[1] + currents[2]);
  for (const Phasor& current : currents) lost += branch.poleOhm * std::norm(current);
  return lost;
}

Currents loadCurrents(const Circuit& circuit, const CircuitSolution& solution, std::vector<Currents>& nodes,
                      PowerBalance& balance) {
  for (std::size_t i = 0; i < circuit.loads.size(); ++i) {
    const Load& load = circuit.loads[i];
    const LoadSolution& solved = solution.loads[i];
    nodes[load.node][load.pole] += solved.currentA;
    if (load.toPole) nodes[load.node][*load.toPole] -= solved.currentA;
    balance.loadsVa += solved.voltageV * std::conj(solved.currentA);
  }
  for (std::size_t i = circuit.nodes.size(); i-- > 0;) {
    balance.branchesVa += lostVa(circuit.nodes[i].branch, nodes[i]);
    if (i == 0) break;
    for (std::size_t pole = 0; pole < nodes[i].size(); ++pole) {
      nodes[circuit.nodes[i].parent][pole] += nodes[i][pole];
    }
  }
  return nodes[0];
}

}  // namespace

PowerBalance powerBalance(const Network& network, const Solution& solution) {
  CORDREACH_EXPECTS(solution.circuits.size() == network.circuits.size());
  PowerBalance balance;
  std::vector<Currents> buses(network.panels.size());
  for (std::size_t c = 0; c < network.circuits.size(); ++c) {
    const Circuit& circuit = network.circuits[c];
    std::vector<Currents> nodes(circuit.nodes.size());
    const Currents drawn = loadCurrents(circuit, solution.circuits[c], nodes, balance);
    for (std::size_t pole = 0; pole < circuit.phases.size(); ++pole) {
      buses[circuit.panel][circuit.phases[pole]] += drawn[pole];
    }
  }
  for (std::size_t i = network.panels.size(); i-- > 0;) {
    const Panel& panel = network.panels[i];
    balance.branchesVa += lostVa(panel.feeder, buses[i]);
    if (panel.fedFrom) {
      for (std::size_t k = 0; k < panel.feedPhases.size(); ++k)
        buses[*panel.fedFrom][panel.feedPhases[k]] += buses[i][k];
    } else {
      for (std::size_t k = 0; k < panel.sourceV.size(); ++k)
        balance.sourceVa += panel.sourceV[k] * std::conj(buses[i][k]);
    }
  }
  return balance;
}

}  // namespace cordreach::network
