// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/queries.h"

#include <algorithm>
#include <map>
#include <set>

#include "site/extension_times.h"
#include "site/spans.h"

namespace cordreach::site {
namespace {

template <class Named>
const Named* named(const std::vector<Named>& items, const std::string& name) {
  const auto found = std::find_if(items.begin(), items.end(), [&](const Named& item) { return item.name == name; });
  return found == items.end() ? nullptr : &*found;
}

bool together(const std::optional<Hours>& a, const std::optional<Hours>& b) { return !a || !b || a->overlaps(*b); }

// The use of a cord when the hookup begins: one with hours that hold it, else the one that has none, else one that
// begins while the hookup lasts.
const ExtensionUse* useOf(const Site& site, const CordId& cord, const Hookup& hookup) {
  const ExtensionUse* always = nullptr;
  const ExtensionUse* later = nullptr;
  for (const ExtensionUse& use : site.all<ExtensionUse>()) {
    if (use.cord != cord) continue;
    if (use.hours && use.hours->holds(hoursOrAlways(hookup.hours).from)) return &use;
    if (!use.hours) always = &use;
    if (later == nullptr && together(use.hours, hookup.hours)) later = &use;
  }
  return always != nullptr ? always : later;
}

// A machine with several plugs passes on what its first inlet gets.
const Hookup* hookupOf(const Site& site, const MachineId& machine, const Hookup& hookup) {
  const Hookup* later = nullptr;
  for (const Hookup& one : site.all<Hookup>()) {
    if (one.machine != machine) continue;
    if (hoursOrAlways(one.hours).holds(hoursOrAlways(hookup.hours).from)) return &one;
    if (later == nullptr && together(one.hours, hookup.hours)) later = &one;
  }
  return later;
}

const Socket& socketOf(const ChainLink& link) {
  return link.extension != nullptr ? link.extension->socket : link.through->socket;
}

bool feeds(const Outlet& outlet, const CircuitId& circuit) {
  return std::any_of(outlet.contacts.begin(), outlet.contacts.end(), [&](const Contact& contact) {
    return contact.assignment && contact.assignment->circuit == circuit;
  });
}

}  // namespace

const Contact* contactOf(const Site& site, const OutletSocket& socket) {
  return named(site.at<Outlet>(socket.outlet).contacts, socket.contact);
}

const Inlet* inletOf(const Site& site, const Hookup& hookup) {
  return named(site.at<Machine>(hookup.machine).inlets, hookup.inlet);
}

const Circuit* circuitOf(const Site& site, const OutletSocket& socket) {
  const Contact* contact = contactOf(site, socket);
  if (contact == nullptr || !contact->assignment) return nullptr;
  return &site.at<Circuit>(contact->assignment->circuit);
}

UseClass useOf(const Contact& contact, const Circuit* circuit) {
  return circuit == nullptr ? contact.use : std::max(contact.use, circuit->use);
}

UseClass useOf(const Site& site, const OutletSocket& socket) {
  const Contact* contact = contactOf(site, socket);
  return contact == nullptr ? UseClass::Ordinary : useOf(*contact, circuitOf(site, socket));
}

std::vector<ChainLink> linksOf(const Site& site, const Hookup& hookup) {
  std::vector<ChainLink> links;
  const Socket* socket = &hookup.socket;
  // A loop can't be, but at other hours two cords may well have been the other way round.
  for (int step = 0; step < ExtensionTimes::kLongestChain; ++step) {
    ChainLink link;
    if (const auto* cord = std::get_if<CordSocket>(socket)) link.extension = useOf(site, cord->cord, hookup);
    if (const auto* machine = std::get_if<MachineSocket>(socket))
      link.through = hookupOf(site, machine->machine, hookup);
    if (link.extension == nullptr && link.through == nullptr) break;
    socket = &socketOf(link);
    links.push_back(link);
  }
  std::reverse(links.begin(), links.end());
  return links;
}

std::optional<Chain> chainOf(const Site& site, const Hookup& hookup) {
  std::vector<ChainLink> links = linksOf(site, hookup);
  const auto* outlet = std::get_if<OutletSocket>(links.empty() ? &hookup.socket : &socketOf(links.front()));
  if (outlet == nullptr) return std::nullopt;
  return Chain{*outlet, std::move(links)};
}

std::vector<WiredOutlet> outletsOf(const Site& site, const CircuitId& circuit) {
  std::map<std::optional<OutletId>, std::vector<const Run*>> from;
  std::set<OutletId> fed;
  for (const Run& run : site.all<Run>()) {
    if (run.circuit != circuit) continue;
    from[run.from].push_back(&run);
    fed.insert(run.to);
  }
  std::vector<WiredOutlet> order;
  std::set<OutletId> listed;
  const auto list = [&](const OutletId& id, const Run* run) {
    if (listed.insert(id).second) order.push_back({&site.at<Outlet>(id), run});
  };
  for (const Run* run : from[std::nullopt]) list(run->to, run);
  for (const auto& [id, runs] : from) {  // where a drawn part begins whose way from the panel is not drawn
    if (id && fed.count(*id) == 0) list(*id, nullptr);
  }
  for (std::size_t at = 0; at < order.size(); ++at) {
    for (const Run* run : from[order[at].outlet->id]) list(run->to, run);
  }
  for (const Outlet& outlet : site.all<Outlet>()) {
    if (feeds(outlet, circuit)) list(outlet.id, nullptr);
  }
  return order;
}

PluggedIn pluggedInAt(const Site& site, units::Duration time) {
  PluggedIn there;
  for (const Hookup& hookup : site.all<Hookup>()) {
    if (hoursOrAlways(hookup.hours).holds(time)) there.hookups.push_back(&hookup);
  }
  ExtensionTimes times(site);
  for (const ExtensionUse& use : site.all<ExtensionUse>()) {
    const Spans spans = times.spansOf(use);
    if (std::any_of(spans.begin(), spans.end(), [&](const Hours& span) { return span.holds(time); })) {
      there.extensions.push_back(&use);
    }
  }
  return there;
}

}  // namespace cordreach::site
