// SPDX-License-Identifier: GPL-3.0-or-later
// Small networks said in a few words, for tests of the network.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "network/network.h"
#include "support/network_loads.h"

namespace cordreach::testing {

inline network::Panel sourcePanel(std::vector<network::Phasor> sourceV, network::Branch feeder = {}) {
  network::Panel panel;
  panel.label = "panel";
  panel.sourceV = std::move(sourceV);
  panel.feeder = feeder;
  return panel;
}

// A chain of nodes: each branch leads to the next node.
inline network::Circuit chain(std::vector<std::size_t> phases, const std::vector<network::Branch>& branches) {
  network::Circuit circuit;
  circuit.label = "circuit";
  circuit.phases = std::move(phases);
  for (std::size_t i = 0; i < branches.size(); ++i) {
    circuit.nodes.push_back({"node " + std::to_string(i), i == 0 ? 0 : i - 1, branches[i]});
  }
  return circuit;
}

inline void addLoad(network::Circuit& circuit, std::size_t node, Law law, std::size_t pole = 0,
                    std::optional<std::size_t> toPole = std::nullopt) {
  circuit.loads.push_back({"load " + std::to_string(circuit.loads.size()), node, pole, toPole, std::move(law)});
}

// One source without impedance and one circuit on it.
inline network::Network oneCircuit(std::vector<network::Phasor> sourceV, network::Circuit circuit) {
  return {{sourcePanel(std::move(sourceV))}, {std::move(circuit)}};
}

}  // namespace cordreach::testing
