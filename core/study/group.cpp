// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/group.h"

namespace cordreach::study {

namespace {

constexpr std::size_t kMostPoles = 3;

using Neighbours = std::map<site::CircuitId, std::vector<site::CircuitId>>;

// Shared neutrals from both sides, whichever side says so.
Neighbours neutralNeighbours(const site::Site& site) {
  Neighbours neighbours;
  for (const auto& circuit : site.all<site::Circuit>()) {
    for (const auto& other : circuit.sharesNeutralWith) {
      if (site.at<site::Circuit>(other).panel != circuit.panel) continue;
      neighbours[circuit.id].push_back(other);
      neighbours[other].push_back(circuit.id);
    }
  }
  return neighbours;
}

std::set<site::CircuitId> companyOf(const site::CircuitId& start, const Neighbours& neighbours) {
  std::set<site::CircuitId> company{start};
  std::vector<site::CircuitId> open{start};
  while (!open.empty()) {
    const site::CircuitId id = open.back();
    open.pop_back();
    const auto found = neighbours.find(id);
    if (found == neighbours.end()) continue;
    for (const auto& other : found->second) {
      if (company.insert(other).second) open.push_back(other);
    }
  }
  return company;
}

std::vector<std::size_t> phasesOf(const site::Circuit& circuit) {
  return circuit.phases.empty() ? std::vector<std::size_t>{0} : circuit.phases;
}

// A bundle holds three poles; what goes beyond stands in a bundle of its own.
CircuitGroup makeGroup(const site::Site& site, const std::set<site::CircuitId>& company, const Groups& placed) {
  CircuitGroup group{site.at<site::Circuit>(*company.begin()).panel, {}, {}, {}};
  for (const auto& id : company) {
    const auto phases = phasesOf(site.at<site::Circuit>(id));
    if (placed.places.contains(id) || group.phases.size() + phases.size() > kMostPoles) continue;
    group.firstPoles.push_back(group.phases.size());
    group.members.push_back(id);
    group.phases.insert(group.phases.end(), phases.begin(), phases.end());
  }
  return group;
}

}  // namespace

Groups groupsOf(const site::Site& site, const std::set<site::PanelId>& panels) {
  Groups result;
  const Neighbours neighbours = neutralNeighbours(site);
  for (const auto& circuit : site.all<site::Circuit>()) {
    if (!panels.contains(circuit.panel)) continue;
    const auto company = companyOf(circuit.id, neighbours);
    while (!result.places.contains(circuit.id)) {
      CircuitGroup group = makeGroup(site, company, result);
      for (std::size_t i = 0; i < group.members.size(); ++i) {
        result.places.insert({group.members[i], {result.groups.size(), i}});
      }
      result.groups.push_back(std::move(group));
    }
  }
  return result;
}

}  // namespace cordreach::study
