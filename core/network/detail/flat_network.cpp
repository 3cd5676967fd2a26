// SPDX-License-Identifier: GPL-3.0-or-later
// Putting a network into flat arrays, with its own rules checked once.
#include "network/detail/flat_network.h"

#include <array>

#include "base/contract.h"

namespace cordreach::network::detail {
namespace {

constexpr std::size_t kMostPoles = 3;

Impedance impedance(Phasor ohm) { return {ohm.real(), ohm.imag()}; }

void addPanel(FlatNetwork& flat, const Panel& panel, FlatPanel made) {
  made.pole = impedance(panel.feeder.poleOhm);
  made.neutral = impedance(panel.feeder.neutralOhm);
  made.voltageAt = flat.voltageSize;
  made.nortonAt = flat.nortonSize;
  flat.voltageSize += 2 * made.phases;
  flat.nortonSize += nortonSize(made.phases);
  flat.panels.push_back(made);
}

FlatPanel sourced(std::size_t original, std::span<const Phasor> sourceV) {
  CORDREACH_EXPECTS(!sourceV.empty() && sourceV.size() <= kMostPoles);
  FlatPanel made;
  made.original = original;
  made.phases = sourceV.size();
  for (std::size_t i = 0; i < sourceV.size(); ++i) made.sourceV[i] = sourceV[i];
  return made;
}

FlatPanel fed(std::size_t original, const Panel& panel, std::size_t flatParent, std::size_t parentPhases) {
  CORDREACH_EXPECTS(!panel.feedPhases.empty() && panel.feedPhases.size() <= kMostPoles);
  FlatPanel made;
  made.original = original;
  made.phases = panel.feedPhases.size();
  made.fedFrom = flatParent;
  for (std::size_t i = 0; i < made.phases; ++i) {
    CORDREACH_EXPECTS(panel.feedPhases[i] < parentPhases);
    made.feedPhases[i] = static_cast<std::uint8_t>(panel.feedPhases[i]);
  }
  return made;
}

void addNodes(FlatNetwork& flat, const FlatCircuit& made, const Circuit& circuit) {
  for (std::size_t i = 0; i < circuit.nodes.size(); ++i) {
    const Node& node = circuit.nodes[i];
    CORDREACH_EXPECTS(i == 0 || node.parent < i);
    FlatNode flatNode;
    const bool single = made.poles == 1;
    flatNode.pole = impedance(single ? node.branch.poleOhm + node.branch.neutralOhm : node.branch.poleOhm);
    if (!single) flatNode.neutral = impedance(node.branch.neutralOhm);
    flatNode.parent = static_cast<std::uint32_t>(node.parent);
    flat.nodes.push_back(flatNode);
  }
}

FlatLoad flatLoad(const FlatCircuit& made, const Load& load, std::size_t original) {
  CORDREACH_EXPECTS(load.law != nullptr && load.pole < made.poles);
  CORDREACH_EXPECTS(!load.toPole || (*load.toPole < made.poles && *load.toPole != load.pole));
  FlatLoad flat;
  flat.law = load.law.get();
  flat.always = load.law->always();
  flat.pullOutV = load.law->pullOutVoltageV();
  flat.original = static_cast<std::uint32_t>(original);
  const std::size_t nodeAt = made.voltageAt + load.node * 2 * made.poles;
  flat.pole = static_cast<std::uint32_t>(nodeAt + 2 * load.pole);
  flat.poleIndex = static_cast<std::uint8_t>(load.pole);
  if (load.toPole) {
    flat.toPole = static_cast<std::uint32_t>(nodeAt + 2 * *load.toPole);
    flat.toPoleIndex = static_cast<std::uint8_t>(*load.toPole);
  }
  return flat;
}

// Grouped by node by counting, so that the cost stays linear whatever order the loads are listed in.
void addLoads(FlatNetwork& flat, const FlatCircuit& made, const Circuit& circuit) {
  const std::span<FlatNode> nodes(flat.nodes.data() + made.firstNode, circuit.nodes.size());
  for (const Load& load : circuit.loads) {
    CORDREACH_EXPECTS(load.node < nodes.size());
    ++nodes[load.node].endLoad;
  }
  auto next = static_cast<std::uint32_t>(made.firstLoad);
  for (FlatNode& node : nodes) {
    node.firstLoad = next;
    next += node.endLoad;
    node.endLoad = node.firstLoad;
  }
  flat.loads.resize(made.endLoad);
  for (std::size_t i = 0; i < circuit.loads.size(); ++i) {
    const FlatLoad load = flatLoad(made, circuit.loads[i], i);
    flat.onlyImpedances = flat.onlyImpedances && load.always != nullptr;
    flat.loads[nodes[circuit.loads[i].node].endLoad++] = load;
  }
}

void addCircuit(FlatNetwork& flat, const Circuit& circuit, std::size_t original, std::size_t flatPanel,
                std::span<const std::size_t> phases) {
  CORDREACH_EXPECTS(!circuit.nodes.empty());
  CORDREACH_EXPECTS(!phases.empty() && phases.size() <= kMostPoles);
  FlatCircuit made;
  made.original = original;
  made.panel = flatPanel;
  made.poles = phases.size();
  for (std::size_t i = 0; i < made.poles; ++i) {
    CORDREACH_EXPECTS(phases[i] < flat.panels[flatPanel].phases);
    made.phases[i] = static_cast<std::uint8_t>(phases[i]);
  }
  made.firstNode = flat.nodes.size();
  made.endNode = made.firstNode + circuit.nodes.size();
  made.firstLoad = flat.loads.size();
  made.endLoad = made.firstLoad + circuit.loads.size();
  made.voltageAt = flat.voltageSize;
  made.nortonAt = flat.nortonSize;
  flat.voltageSize += 2 * made.poles * circuit.nodes.size();
  flat.nortonSize += nortonSize(made.poles) * circuit.nodes.size();
  flat.onlyImpedances = flat.onlyImpedances && made.poles == 1;
  addNodes(flat, made, circuit);
  addLoads(flat, made, circuit);
  flat.circuits.push_back(made);
}

void clear(FlatNetwork& flat) {
  flat.panels.clear();
  flat.circuits.clear();
  flat.nodes.clear();
  flat.loads.clear();
  flat.voltageSize = 0;
  flat.nortonSize = 0;
  flat.onlyImpedances = true;
}

void reserve(FlatNetwork& flat, const Network& network) {
  std::size_t nodes = 0;
  std::size_t loads = 0;
  for (const Circuit& circuit : network.circuits) {
    nodes += circuit.nodes.size();
    loads += circuit.loads.size();
  }
  flat.panels.reserve(network.panels.size());
  flat.circuits.reserve(network.circuits.size());
  flat.nodes.reserve(nodes);
  flat.loads.reserve(loads);
}

}  // namespace

std::size_t nortonSize(std::size_t poles) {
  return poles == 1 ? kNortonSize<1> : poles == 2 ? kNortonSize<2> : kNortonSize<3>;
}

void flatten(const Network& network, FlatNetwork& flat) {
  clear(flat);
  reserve(flat, network);
  for (std::size_t i = 0; i < network.panels.size(); ++i) {
    const Panel& panel = network.panels[i];
    if (panel.fedFrom) {
      CORDREACH_EXPECTS(*panel.fedFrom < i);
      addPanel(flat, panel, fed(i, panel, *panel.fedFrom, flat.panels[*panel.fedFrom].phases));
    } else {
      addPanel(flat, panel, sourced(i, panel.sourceV));
    }
  }
  for (std::size_t i = 0; i < network.circuits.size(); ++i) {
    CORDREACH_EXPECTS(network.circuits[i].panel < flat.panels.size());
    addCircuit(flat, network.circuits[i], i, network.circuits[i].panel, network.circuits[i].phases);
  }
}

void flattenPanel(const Network& network, std::size_t panel, std::span<const Phasor> feedingV, FlatNetwork& flat) {
  CORDREACH_EXPECTS(panel < network.panels.size());
  clear(flat);
  std::vector<std::optional<std::size_t>> place(network.panels.size());
  place[panel] = 0;
  addPanel(flat, network.panels[panel], sourced(panel, feedingV));
  for (std::size_t i = panel + 1; i < network.panels.size(); ++i) {
    const Panel& other = network.panels[i];
    if (!other.fedFrom || !place[*other.fedFrom]) continue;
    const std::size_t parent = *place[*other.fedFrom];
    place[i] = flat.panels.size();
    addPanel(flat, other, fed(i, other, parent, flat.panels[parent].phases));
  }
  for (std::size_t i = 0; i < network.circuits.size(); ++i) {
    const std::size_t at = network.circuits[i].panel;
    CORDREACH_EXPECTS(at < place.size());
    if (place[at]) addCircuit(flat, network.circuits[i], i, *place[at], network.circuits[i].phases);
  }
}

void flattenCircuit(const Circuit& circuit, std::span<const Phasor> busV, FlatNetwork& flat) {
  CORDREACH_EXPECTS(busV.size() == circuit.phases.size());
  clear(flat);
  addPanel(flat, Panel{}, sourced(0, busV));
  constexpr std::array<std::size_t, kMostPoles> ownOrder{0, 1, 2};
  addCircuit(flat, circuit, 0, 0, std::span(ownOrder).first(busV.size()));
}

}  // namespace cordreach::network::detail
