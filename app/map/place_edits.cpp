// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/place_edits.h"

#include <algorithm>
#include <utility>

#include "panels/fresh_id.h"

namespace cordreach::app {
namespace {

EditResult tried(const site::Site& site, site::Edit edit) {
  site::Site copy = site;
  const auto done = site::apply(edit, copy);
  if (!done) return done.error();
  return edit;
}

template <class T>
void addMove(site::Edit& edit, const site::Site& site, const decltype(T::id)& id, const Shift& shift) {
  const T* before = site.find<T>(id);
  if (before == nullptr || !before->place) return;
  T after = *before;
  after.place->at.xM += shift.rightM;
  after.place->at.yM += shift.downM;
  edit.changes.emplace_back(site::Change<T>{*before, std::move(after)});
}

void addMove(site::Edit& edit, const site::Site& site, const site::RoomId& id, const Shift& shift) {
  const site::Room* before = site.find<site::Room>(id);
  if (before == nullptr) return;
  site::Room after = *before;
  for (geometry::Point& corner : after.outline) corner = {corner.xM + shift.rightM, corner.yM + shift.downM};
  edit.changes.emplace_back(site::Change<site::Room>{*before, std::move(after)});
}

template <class Alter>
EditResult alteredFloor(const site::Site& site, const site::FloorId& id, const char* code, Alter&& alter) {
  const site::Floor* before = site.find<site::Floor>(id);
  if (before == nullptr) return base::Error{"plug.no_longer_there", id.text(), {}};
  site::Floor after = *before;
  alter(after);
  return tried(site, {code, {site::Change<site::Floor>{*before, std::move(after)}}});
}

std::optional<site::CircuitId> circuitOf(const site::Outlet& outlet) {
  for (const site::Contact& contact : outlet.contacts) {
    if (contact.assignment) return contact.assignment->circuit;
  }
  return std::nullopt;
}

void assume(site::Edit& edit, const site::Outlet& outlet, const site::CircuitId& circuit) {
  site::Outlet after = outlet;
  for (site::Contact& contact : after.contacts) {
    if (!contact.assignment) contact.assignment = site::Assignment{circuit, site::HowKnown::Assumed, {}, {}};
  }
  if (after != outlet) edit.changes.emplace_back(site::Change<site::Outlet>{outlet, std::move(after)});
}

}  // namespace

EditResult moveThings(const site::Site& site, const std::vector<rules::Subject>& subjects,
                      const std::vector<site::HookupId>& hookups, const Shift& shift) {
  std::vector<Moved> things;
  for (const rules::Subject& subject : subjects) things.push_back({subject, shift});
  return moveEach(site, things, hookups);
}

EditResult moveEach(const site::Site& site, const std::vector<Moved>& things,
                    const std::vector<site::HookupId>& hookups) {
  using rules::SubjectKind;
  site::Edit edit{"things.move", {}};
  for (const auto& [subject, shift] : things) {
    if (subject.kind == SubjectKind::Outlet) addMove<site::Outlet>(edit, site, site::OutletId(subject.id), shift);
    if (subject.kind == SubjectKind::Panel) addMove<site::Panel>(edit, site, site::PanelId(subject.id), shift);
    if (subject.kind == SubjectKind::FixedLoad) {
      addMove<site::FixedLoad>(edit, site, site::FixedLoadId(subject.id), shift);
    }
    if (subject.kind == SubjectKind::Room) addMove(edit, site, site::RoomId(subject.id), shift);
    if (subject.kind != SubjectKind::Machine) continue;
    const std::size_t before = edit.changes.size();
    for (const site::HookupId& id : hookups) {
      const site::Hookup* hookup = site.find<site::Hookup>(id);
      if (hookup != nullptr && hookup->machine.text() == subject.id) addMove<site::Hookup>(edit, site, id, shift);
    }
    if (edit.changes.size() == before) addMove<site::Machine>(edit, site, site::MachineId(subject.id), shift);
  }
  return tried(site, std::move(edit));
}

EditResult addWall(const site::Site& site, const site::FloorId& floor, const site::Wall& wall) {
  return alteredFloor(site, floor, "wall.add", [&](site::Floor& one) { one.walls.push_back(wall); });
}

EditResult removeWall(const site::Site& site, const site::FloorId& floor, std::size_t index) {
  return alteredFloor(site, floor, "wall.remove", [&](site::Floor& one) {
    if (index < one.walls.size()) one.walls.erase(one.walls.begin() + static_cast<std::ptrdiff_t>(index));
  });
}

EditResult addCorridorLine(const site::Site& site, const site::FloorId& floor, const site::CorridorLine& line) {
  return alteredFloor(site, floor, "corridor.add", [&](site::Floor& one) { one.corridorLines.push_back(line); });
}

EditResult removeCorridorLine(const site::Site& site, const site::FloorId& floor, std::size_t index) {
  return alteredFloor(site, floor, "corridor.remove", [&](site::Floor& one) {
    auto& lines = one.corridorLines;
    if (index < lines.size()) lines.erase(lines.begin() + static_cast<std::ptrdiff_t>(index));
  });
}

EditResult addRoom(const site::Site& site, const site::Room& room) {
  if (room.outline.size() < 3) return base::Error{"room.no_area", {}, {}};
  return tried(site, {"room.add", {site::Change<site::Room>{std::nullopt, room}}});
}

EditResult changeRoom(const site::Site& site, const site::Room& room) {
  const site::Room* before = site.find<site::Room>(room.id);
  if (before == nullptr) return base::Error{"plug.no_longer_there", room.id.text(), {}};
  return tried(site, {"room.change", {site::Change<site::Room>{*before, room}}});
}

EditResult addRun(const site::Site& site, const std::optional<site::OutletId>& from, const site::OutletId& to,
                  std::vector<geometry::Point> path) {
  const site::Outlet* target = site.find<site::Outlet>(to);
  const site::Outlet* source = from ? site.find<site::Outlet>(*from) : nullptr;
  if (target == nullptr || (from && source == nullptr)) return base::Error{"plug.no_longer_there", to.text(), {}};
  const auto theirs = circuitOf(*target);
  const auto ours = source != nullptr ? circuitOf(*source) : theirs;
  if (!theirs && !ours) return base::Error{"run.no_circuit", target->label, {}};
  if (theirs && ours && *theirs != *ours) return base::Error{"run.two_circuits", target->label, {}};
  const site::CircuitId circuit = theirs ? *theirs : *ours;
  site::Edit edit{"run.add", {}};
  if (!theirs) assume(edit, *target, circuit);
  if (source != nullptr && !circuitOf(*source)) assume(edit, *source, circuit);
  site::Run run{freshId<site::Run>(site), circuit, from, to};
  run.path = std::move(path);
  edit.changes.emplace_back(site::Change<site::Run>{std::nullopt, std::move(run)});
  return tried(site, std::move(edit));
}

}  // namespace cordreach::app
