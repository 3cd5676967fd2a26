// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/feeding.h"

#include <algorithm>
#include <set>

#include "site/natural_order.h"
#include "site/queries.h"

namespace cordreach::site {

namespace {

std::vector<const Circuit*> circuitsOf(const Site& site, const PanelId& panel) {
  std::vector<const Circuit*> circuits;
  for (const Circuit& circuit : site.all<Circuit>()) {
    if (circuit.panel == panel) circuits.push_back(&circuit);
  }
  std::stable_sort(circuits.begin(), circuits.end(),
                   [](const Circuit* a, const Circuit* b) { return comesBefore(a->number, b->number); });
  return circuits;
}

void addOutlet(const Outlet& outlet, Feeding& feeding) {
  FedOutlet fed{outlet.id, {}, HowKnown::Traced};
  for (const Contact& contact : outlet.contacts) {
    if (!contact.assignment || contact.assignment->circuit != feeding.circuit) continue;
    fed.contacts.push_back(contact.name);
    fed.how = std::max(fed.how, contact.assignment->how);
  }
  feeding.outlets.push_back(std::move(fed));
}

}  // namespace

Feeding feedingOf(const Site& site, const CircuitId& circuit) {
  Feeding feeding{circuit, {}, {}, {}};
  for (const WiredOutlet& wired : outletsOf(site, circuit)) addOutlet(*wired.outlet, feeding);
  for (const FixedLoad& load : site.all<FixedLoad>()) {
    if (load.circuit == circuit) feeding.loads.push_back(load.id);
  }
  std::set<MachineId> listed;
  for (const Hookup& hookup : site.all<Hookup>()) {
    const auto chain = chainOf(site, hookup);
    const Circuit* its = chain ? circuitOf(site, chain->outlet) : nullptr;
    if (its != nullptr && its->id == circuit && listed.insert(hookup.machine).second) {
      feeding.machines.push_back(hookup.machine);
    }
  }
  return feeding;
}

std::vector<CircuitId> switchedWith(const Site& site, const CircuitId& circuit) {
  const Circuit& it = site.at<Circuit>(circuit);
  std::vector<CircuitId> together;
  for (const Circuit* other : circuitsOf(site, it.panel)) {
    const auto& shared = it.sharesNeutralWith;
    const bool isShared = std::find(shared.begin(), shared.end(), other->id) != shared.end();
    if (other->id == circuit || (it.tied && isShared)) together.push_back(other->id);
  }
  return together;
}

std::vector<CircuitId> circuitsBehind(const Site& site, const PanelId& panel) {
  std::vector<CircuitId> circuits;
  std::vector<PanelId> open{panel};
  std::set<PanelId> seen{panel};
  for (std::size_t i = 0; i < open.size(); ++i) {
    for (const Circuit* circuit : circuitsOf(site, open[i])) circuits.push_back(circuit->id);
    const PanelId from = open[i];
    for (const Panel& fed : site.all<Panel>()) {
      if (fed.fedFrom == from && seen.insert(fed.id).second) open.push_back(fed.id);
    }
  }
  return circuits;
}

std::size_t contactsWithoutBreaker(const Site& site) {
  std::size_t count = 0;
  for (const Outlet& outlet : site.all<Outlet>()) {
    count += static_cast<std::size_t>(std::count_if(outlet.contacts.begin(), outlet.contacts.end(),
                                                    [](const Contact& contact) { return !contact.assignment; }));
  }
  return count;
}

}  // namespace cordreach::site
