// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/delete_things.h"

#include <algorithm>
#include <set>
#include <tuple>

#include "planning/plug.h"

namespace cordreach::app {

namespace {

using rules::Subject;
using rules::SubjectKind;

// What goes, by kind; grown until nothing more follows.
struct Doomed {
  std::tuple<std::set<site::PanelId>, std::set<site::CircuitId>, std::set<site::OutletId>, std::set<site::RunId>,
             std::set<site::FixedLoadId>, std::set<site::MachineId>, std::set<site::CordId>, std::set<site::PadId>,
             std::set<site::HookupId>, std::set<site::ExtensionUseId>, std::set<site::EventId>, std::set<site::RoomId>>
      ids;

  template <class Id>
  bool holds(const Id& id) const {
    return std::get<std::set<Id>>(ids).contains(id);
  }
  template <class Id>
  bool holds(const std::optional<Id>& id) const {
    return id && holds(*id);
  }
  template <class Id>
  bool add(const Id& id) {
    return std::get<std::set<Id>>(ids).insert(id).second;
  }
  template <class Id>
  [[nodiscard]] std::size_t count() const {
    return std::get<std::set<Id>>(ids).size();
  }
};

void addSubject(const Subject& subject, Doomed& doomed) {
  switch (subject.kind) {
    case SubjectKind::Hookup:
      doomed.add(site::HookupId(subject.id));
      return;
    case SubjectKind::Machine:
      doomed.add(site::MachineId(subject.id));
      return;
    case SubjectKind::Cord:
      doomed.add(site::CordId(subject.id));
      return;
    case SubjectKind::Outlet:
      doomed.add(site::OutletId(subject.id));
      return;
    case SubjectKind::Circuit:
      doomed.add(site::CircuitId(subject.id));
      return;
    case SubjectKind::Panel:
      doomed.add(site::PanelId(subject.id));
      return;
    case SubjectKind::Pad:
      doomed.add(site::PadId(subject.id));
      return;
    case SubjectKind::FixedLoad:
      doomed.add(site::FixedLoadId(subject.id));
      return;
    case SubjectKind::Room:
      doomed.add(site::RoomId(subject.id));
      return;
  }
}

// A socket that goes, or that nothing leads to any more.
bool isLost(const site::Socket& socket, const Doomed& doomed) {
  if (const auto* outlet = std::get_if<site::OutletSocket>(&socket)) return doomed.holds(outlet->outlet);
  if (const auto* cord = std::get_if<site::CordSocket>(&socket)) return doomed.holds(cord->cord);
  return doomed.holds(std::get<site::MachineSocket>(socket).machine);
}

bool hangsOnLostExtension(const site::Site& site, const site::Hookup& hookup, const Doomed& doomed) {
  const auto* socket = std::get_if<site::CordSocket>(&hookup.socket);
  if (socket == nullptr) return false;
  const auto& uses = site.all<site::ExtensionUse>();
  return std::any_of(uses.begin(), uses.end(), [&](const site::ExtensionUse& use) {
    return use.cord == socket->cord && doomed.holds(use.id) && rules::together(use.hours, hookup.hours);
  });
}

// An extension that then serves nobody is put away.
bool servesOnlyLost(const site::Site& site, const site::ExtensionUse& use, const Doomed& doomed) {
  const auto users = planning::usersOf(use, site);
  return !users.empty() &&
         std::all_of(users.begin(), users.end(), [&](const site::Hookup* user) { return doomed.holds(user->id); });
}

bool growOnce(const site::Site& site, Doomed& doomed) {
  bool grew = false;
  const auto grow = [&](bool goes, const auto& id) { grew = (goes && doomed.add(id)) || grew; };
  for (const auto& panel : site.all<site::Panel>()) grow(doomed.holds(panel.fedFrom), panel.id);
  for (const auto& circuit : site.all<site::Circuit>()) grow(doomed.holds(circuit.panel), circuit.id);
  for (const auto& run : site.all<site::Run>()) {
    grow(doomed.holds(run.circuit) || doomed.holds(run.from) || doomed.holds(run.to), run.id);
  }
  for (const auto& load : site.all<site::FixedLoad>()) grow(doomed.holds(load.circuit), load.id);
  for (const auto& hookup : site.all<site::Hookup>()) {
    grow(doomed.holds(hookup.machine) || isLost(hookup.socket, doomed) || hangsOnLostExtension(site, hookup, doomed),
         hookup.id);
  }
  for (const auto& use : site.all<site::ExtensionUse>()) {
    grow(doomed.holds(use.cord) || isLost(use.socket, doomed) || servesOnlyLost(site, use, doomed), use.id);
  }
  for (const auto& event : site.all<site::Event>()) {
    grow(doomed.holds(event.hookup) || doomed.holds(event.extension) || doomed.holds(event.load) ||
             doomed.holds(event.outlet),
         event.id);
  }
  return grew;
}

template <class T>
void removeAll(const site::Site& site, const Doomed& doomed, site::Edit& edit) {
  for (const T& thing : site.all<T>()) {
    if (doomed.holds(thing.id)) edit.changes.emplace_back(site::Change<T>{thing, std::nullopt});
  }
}

template <class T, class Alter>
void alterRest(const site::Site& site, const Doomed& doomed, site::Edit& edit, Alter alter) {
  for (const T& thing : site.all<T>()) {
    if (doomed.holds(thing.id)) continue;
    T after = thing;
    alter(after);
    if (!(after == thing)) edit.changes.emplace_back(site::Change<T>{thing, std::move(after)});
  }
}

void letGo(const site::Site& site, const Doomed& doomed, Deletion& deletion) {
  site::Edit& edit = deletion.edit;
  alterRest<site::Circuit>(site, doomed, edit, [&](site::Circuit& circuit) {
    std::erase_if(circuit.sharesNeutralWith, [&](const auto& other) { return doomed.holds(other); });
  });
  alterRest<site::Outlet>(site, doomed, edit, [&](site::Outlet& outlet) {
    for (site::Contact& contact : outlet.contacts) {
      if (!contact.assignment || !doomed.holds(contact.assignment->circuit)) continue;
      contact.assignment.reset();
      contact.poles.clear();
      ++deletion.along.unassigned;
    }
  });
  alterRest<site::FixedLoad>(site, doomed, edit, [&](site::FixedLoad& load) {
    if (!doomed.holds(load.outlet)) return;
    load.outlet.reset();
    load.contact.clear();
  });
  alterRest<site::Machine>(site, doomed, edit, [&](site::Machine& machine) {
    if (doomed.holds(machine.pad)) machine.pad.reset();
  });
  alterRest<site::Hookup>(site, doomed, edit, [&](site::Hookup& hookup) {
    if (doomed.holds(hookup.pad)) hookup.pad.reset();
  });
  alterRest<site::Event>(site, doomed, edit, [&](site::Event& event) {
    if (doomed.holds(event.pad)) event.pad.reset();
  });
}

// An acceptance names its subject by the bare id.
template <class Id>
void addTexts(const std::set<Id>& ids, std::set<std::string>& texts) {
  for (const Id& id : ids) texts.insert(id.text());
}

void dropAcceptances(const site::Site& site, const Doomed& doomed, Deletion& deletion) {
  std::set<std::string> goneIds;
  std::apply([&](const auto&... ids) { (addTexts(ids, goneIds), ...); }, doomed.ids);
  for (const site::Acceptance& accepted : site.all<site::Acceptance>()) {
    if (!goneIds.contains(accepted.subject)) continue;
    deletion.edit.changes.emplace_back(site::Change<site::Acceptance>{accepted, std::nullopt});
    ++deletion.along.acceptances;
  }
}

GoneAlong countOf(const Doomed& doomed) {
  return {.panels = doomed.count<site::PanelId>(),
          .circuits = doomed.count<site::CircuitId>(),
          .runs = doomed.count<site::RunId>(),
          .loads = doomed.count<site::FixedLoadId>(),
          .hookups = doomed.count<site::HookupId>(),
          .extensions = doomed.count<site::ExtensionUseId>()};
}

}  // namespace

Deletion deletionOf(const site::Site& site, const std::vector<Subject>& subjects) {
  Doomed doomed;
  for (const Subject& subject : subjects) addSubject(subject, doomed);
  const GoneAlong named = countOf(doomed);
  while (growOnce(site, doomed)) {
  }
  Deletion deletion{{"thing.delete", {}}, countOf(doomed)};
  deletion.along.panels -= named.panels;
  deletion.along.circuits -= named.circuits;
  deletion.along.loads -= named.loads;
  deletion.along.hookups -= named.hookups;
  removeAll<site::Event>(site, doomed, deletion.edit);
  removeAll<site::ExtensionUse>(site, doomed, deletion.edit);
  removeAll<site::Hookup>(site, doomed, deletion.edit);
  removeAll<site::FixedLoad>(site, doomed, deletion.edit);
  removeAll<site::Run>(site, doomed, deletion.edit);
  removeAll<site::Outlet>(site, doomed, deletion.edit);
  removeAll<site::Circuit>(site, doomed, deletion.edit);
  removeAll<site::Panel>(site, doomed, deletion.edit);
  removeAll<site::Machine>(site, doomed, deletion.edit);
  removeAll<site::Cord>(site, doomed, deletion.edit);
  removeAll<site::Pad>(site, doomed, deletion.edit);
  removeAll<site::Room>(site, doomed, deletion.edit);
  letGo(site, doomed, deletion);
  dropAcceptances(site, doomed, deletion);
  return deletion;
}

}  // namespace cordreach::app
