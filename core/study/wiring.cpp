// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/wiring.h"

#include <algorithm>
#include <memory>

#include "geometry/point.h"
#include "study/assumptions.h"
#include "study/branch_heat.h"
#include "study/source.h"

namespace cordreach::study {

namespace {

using units::ohm;

constexpr double kOpenNeutralOhm = 1e9;

// Neighbours in the site are mostly on one circuit, so the last answer is mostly the next; a building is asked about as
// often as it has panels.
class PlaceFinder {
 public:
  explicit PlaceFinder(const Groups& groups) : m_groups(groups) {}

  // Null: none of ours. The id must outlive the finder.
  const Groups::Place* find(const site::CircuitId& id) {
    if (m_last == nullptr || *m_last != id) {
      const auto at = m_groups.places.find(id);
      m_place = at == m_groups.places.end() ? nullptr : &at->second;
      m_last = &id;
    }
    return m_place;
  }

 private:
  const Groups& m_groups;
  const site::CircuitId* m_last = nullptr;
  const Groups::Place* m_place = nullptr;
};

class Wirer {
 public:
  Wirer(const site::Site& site, const WiringOptions& options) : m_site(site), m_options(options) {}

  Wiring run() {
    for (const auto& panel : m_site.all<site::Panel>()) addPanel(panel);
    m_wiring.groups = groupsOf(m_site, m_options.panels);
    for (const CircuitGroup& group : m_wiring.groups.groups) addCircuit(group);
    PlaceFinder places(m_wiring.groups);
    for (const auto& run : m_site.all<site::Run>()) {
      if (places.find(run.circuit) != nullptr) m_runsTo[run.to].push_back(&run);
    }
    for (const auto& outlet : m_site.all<site::Outlet>()) addOutlet(outlet, places);
    return std::move(m_wiring);
  }

 private:
  // Feeding panels stand first, whatever the order of ids.
  void addPanel(const site::Panel& panel) {
    if (!m_options.panels.contains(panel.id) || m_wiring.panels.contains(panel.id)) return;
    network::Panel bus;
    bus.label = panel.name;
    if (panel.fedFrom) {
      addPanel(m_site.at<site::Panel>(*panel.fedFrom));
      bus.fedFrom = m_wiring.panels.at(*panel.fedFrom);
      const std::size_t phases = phaseCount(m_wiring.network.panels[*bus.fedFrom]);
      for (std::size_t i = 0; i < phases; ++i) bus.feedPhases.push_back(i);
      bus.feeder = feederOf(panel);
      m_wiring.nominal.push_back(m_wiring.nominal[*bus.fedFrom]);
    } else {
      const site::Supply* supply = panel.supply ? m_site.find<site::Supply>(*panel.supply) : nullptr;
      const site::Supply used = supply != nullptr ? *supply : assumedSupply();
      const network::Supply source = sourceOf(used, m_options.corner);
      m_wiring.nominal.push_back(nominalLineToNeutral(used.system));
      bus.sourceV = source.sourceV;
      bus.feeder = source.source;
    }
    m_wiring.panels.insert({panel.id, m_wiring.network.panels.size()});
    m_wiring.network.panels.push_back(std::move(bus));
  }

  static std::size_t phaseCount(const network::Panel& panel) {
    return panel.fedFrom ? panel.feedPhases.size() : panel.sourceV.size();
  }

  network::Branch feederOf(const site::Panel& panel) const {
    if (!panel.feederLength || !panel.feederSize) return {};
    return runHeat(panel.feederSize->value, tables::Metal::Copper, *panel.feederLength, {}).warm(0.0, 0.0);
  }

  RunHeat runHeat(units::WireSize size, tables::Metal metal, const site::Stated<units::Length>& length,
                  std::optional<units::Temperature> insulation) const {
    return RunHeat({size, metal, moreIsWorse(length, m_options.corner), insulation, wallOf(m_site)});
  }

  void addCircuit(const CircuitGroup& group) {
    network::Circuit circuit;
    circuit.label = m_site.at<site::Circuit>(group.members.front()).number;
    circuit.panel = m_wiring.panels.at(group.panel);
    const std::size_t phases = phaseCount(m_wiring.network.panels[circuit.panel]);
    for (const std::size_t phase : group.phases) circuit.phases.push_back(std::min(phase, phases - 1));
    network::Node bus{circuit.label, 0, {}};
    const bool lost = std::any_of(group.members.begin(), group.members.end(),
                                  [&](const auto& id) { return m_options.lostNeutral.contains(id); });
    if (lost) bus.branch.neutralOhm = kOpenNeutralOhm;
    circuit.nodes.push_back(std::move(bus));
    m_wiring.network.circuits.push_back(std::move(circuit));
  }

  void addOutlet(const site::Outlet& outlet, PlaceFinder& places) {
    bool unknown = false;
    for (const auto& contact : outlet.contacts) {
      if (!contact.assignment) {
        unknown = true;
      } else if (const Groups::Place* place = places.find(contact.assignment->circuit)) {
        nodeOf(place->group, outlet, contact.assignment->circuit);
      }
    }
    if (unknown) suppose(outlet);
  }

  // The outlet's node on that circuit, wired there through the outlets before it.
  std::size_t nodeOf(std::size_t circuit, const site::Outlet& outlet, const site::CircuitId& id) {
    const auto key = std::pair(circuit, outlet.id);
    if (const auto known = m_wiring.outletNodes.find(key); known != m_wiring.outletNodes.end()) return known->second;
    const auto& feeding = m_site.at<site::Circuit>(id);
    std::size_t parent = 0;
    site::Stated<units::Length> length = assumedRun(m_site.at<site::Panel>(feeding.panel), outlet);
    units::WireSize size = wireOf(feeding);
    if (const site::Run* run = runTo(outlet, circuit)) {
      if (run->from) parent = nodeOf(circuit, m_site.at<site::Outlet>(*run->from), run->circuit);
      if (const auto drawn = drawnRun(*run)) length = *drawn;
      if (run->length) length = *run->length;
      if (run->size) size = run->size->value;
    }
    const auto insulation = feeding.insulation ? std::optional(feeding.insulation->value) : std::nullopt;
    const std::size_t node = addRun(circuit, parent, outlet.label, runHeat(size, feeding.metal, length, insulation));
    m_wiring.outletNodes.insert({key, node});
    return node;
  }

  const site::Run* runTo(const site::Outlet& outlet, std::size_t circuit) const {
    const auto runs = m_runsTo.find(outlet.id);
    if (runs == m_runsTo.end()) return nullptr;
    for (const site::Run* run : runs->second) {
      const auto place = m_wiring.groups.places.find(run->circuit);
      if (place != m_wiring.groups.places.end() && place->second.group == circuit) return run;
    }
    return nullptr;
  }

  std::size_t addRun(std::size_t circuit, std::size_t parent, const std::string& label, RunHeat heat) {
    auto& nodes = m_wiring.network.circuits[circuit].nodes;
    nodes.push_back({label, parent, heat.warm(0.0, 0.0)});
    m_wiring.heated.push_back({circuit, nodes.size() - 1, std::make_shared<RunHeat>(std::move(heat))});
    return nodes.size() - 1;
  }

  // A circuit of its own with the thinnest wire that is common, from the nearest panel.
  void suppose(const site::Outlet& outlet) {
    const site::Panel* panel = nearestPanel(outlet);
    if (panel == nullptr || !m_wiring.panels.contains(panel->id)) return;
    const std::size_t index = m_wiring.network.circuits.size();
    network::Circuit circuit{outlet.label, m_wiring.panels.at(panel->id), {0}, {{outlet.label, 0, {}}}, {}};
    m_wiring.network.circuits.push_back(std::move(circuit));
    const auto heat =
        runHeat(units::WireSize::awg(14), tables::Metal::Copper, assumedRun(*panel, outlet), std::nullopt);
    m_wiring.outletNodes.insert({{index, outlet.id}, addRun(index, 0, outlet.label, heat)});
    m_wiring.supposed.insert({outlet.id, index});
  }

  const site::Panel* nearestPanel(const site::Outlet& outlet) const {
    const site::Panel* nearest = nullptr;
    for (const auto& panel : m_site.all<site::Panel>()) {
      if (nearest == nullptr || assumedRun(panel, outlet).value < assumedRun(*nearest, outlet).value) nearest = &panel;
    }
    return nearest;
  }

  const site::Site& m_site;
  const WiringOptions& m_options;
  Wiring m_wiring;
  std::map<site::OutletId, std::vector<const site::Run*>> m_runsTo;
};

// Between the circuit's poles, or between those of them that a contact uses: one to the neutral, two to each other.
Tap tapAt(const Wiring& wiring, const site::Site& site, const site::CircuitId& id, std::size_t node,
          const std::vector<std::size_t>& contactPhases) {
  const auto& place = wiring.groups.places.at(id);
  const std::size_t first = wiring.groups.groups[place.group].firstPoles[place.member];
  const std::vector<std::size_t>& phases = site.at<site::Circuit>(id).phases;
  std::vector<std::size_t> used;
  for (std::size_t i = 0; i < phases.size(); ++i) {
    const bool named = std::find(contactPhases.begin(), contactPhases.end(), phases[i]) != contactPhases.end();
    if (contactPhases.empty() || named) used.push_back(first + i);
  }
  if (used.empty()) used.push_back(first);
  return {place.group, node, used.front(), used.size() > 1 ? std::optional(used[1]) : std::nullopt};
}

network::Phasor sourcePhasor(const Wiring& wiring, const network::Circuit& circuit, std::size_t pole) {
  std::size_t panel = circuit.panel;
  std::size_t phase = circuit.phases[pole];
  while (wiring.network.panels[panel].fedFrom) {
    phase = wiring.network.panels[panel].feedPhases[phase];
    panel = *wiring.network.panels[panel].fedFrom;
  }
  return wiring.network.panels[panel].sourceV[phase];
}

}  // namespace

Wiring wire(const site::Site& site, const WiringOptions& options) { return Wirer(site, options).run(); }

std::optional<Tap> tapOf(const Wiring& wiring, const site::Site& site, const site::Outlet& outlet,
                         const site::Contact& contact) {
  if (!contact.assignment) {
    const auto supposed = wiring.supposed.find(outlet.id);
    if (supposed == wiring.supposed.end()) return std::nullopt;
    return Tap{supposed->second, wiring.outletNodes.at({supposed->second, outlet.id}), 0, std::nullopt};
  }
  const auto place = wiring.groups.places.find(contact.assignment->circuit);
  if (place == wiring.groups.places.end()) return std::nullopt;
  return tapAt(wiring, site, contact.assignment->circuit, wiring.outletNodes.at({place->second.group, outlet.id}),
               contact.poles);
}

std::optional<Tap> tapOf(const Wiring& wiring, const site::Site& site, const site::FixedLoad& load) {
  const auto place = wiring.groups.places.find(load.circuit);
  if (place == wiring.groups.places.end()) return std::nullopt;
  std::size_t node = wiring.network.circuits[place->second.group].nodes.size() - 1;
  if (load.outlet) {
    const auto known = wiring.outletNodes.find({place->second.group, *load.outlet});
    if (known != wiring.outletNodes.end()) node = known->second;
  }
  return tapAt(wiring, site, load.circuit, node, {});
}

units::Voltage openCircuitOf(const Wiring& wiring, const Tap& tap) {
  const network::Circuit& circuit = wiring.network.circuits[tap.circuit];
  const network::Phasor from = sourcePhasor(wiring, circuit, tap.pole);
  const network::Phasor to = tap.toPole ? sourcePhasor(wiring, circuit, *tap.toPole) : network::Phasor{};
  return std::abs(from - to) * units::volt;
}

// The source's own volts may be off nominal; their ratio between the poles is not.
units::Voltage nominalOf(const Wiring& wiring, const Tap& tap) {
  const network::Circuit& circuit = wiring.network.circuits[tap.circuit];
  const double lineToNeutralV = std::abs(sourcePhasor(wiring, circuit, tap.pole));
  return openCircuitOf(wiring, tap).in(units::volt) / lineToNeutralV * wiring.nominal[circuit.panel];
}

}  // namespace cordreach::study
