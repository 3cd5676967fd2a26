// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/plug_targets.h"

#include <algorithm>

#include "planning/outlet_choice.h"
#include "planning/plug.h"
#include "planning/plug_start.h"
#include "site/queries.h"
#include "study/assumptions.h"
#include "tables/receptacles.h"

namespace cordreach::app {
namespace {

// The facts about a held plug that decide where it can go.
struct Held {
  std::string plug;
  std::optional<units::Length> reach;
  std::optional<site::Hours> hours;
  std::optional<site::Place> place;
  bool outOfService = false;
  std::optional<site::HookupId> hookup;     // itself, which takes no socket from itself
  std::optional<site::ExtensionUseId> use;  // itself, or the extension that is put away when it moves
};

const site::Inlet* inletNamed(const site::Machine& machine, const std::string& name) {
  for (const site::Inlet& inlet : machine.inlets) {
    if (inlet.name == name) return &inlet;
  }
  return nullptr;
}

std::optional<Held> heldMachine(const site::Site& site, const MachinePlug& plug) {
  const site::Machine* machine = site.find<site::Machine>(plug.machine);
  const site::Inlet* inlet = machine != nullptr ? inletNamed(*machine, plug.inlet) : nullptr;
  if (inlet == nullptr) return std::nullopt;
  Held held{inlet->cord.plug, std::nullopt, std::nullopt, machine->place, machine->outOfService.has_value(),
            plug.hookup,      std::nullopt};
  if (inlet->cord.length) held.reach = inlet->cord.length->value;
  const site::Hookup* hookup = plug.hookup ? site.find<site::Hookup>(*plug.hookup) : nullptr;
  if (hookup == nullptr) return held;
  held.hours = hookup->hours;
  if (hookup->place) held.place = hookup->place;
  const auto plugging = planning::pluggingOf(*hookup, site);
  if (plugging.extension != nullptr && planning::usersOf(*plugging.extension, site).size() <= 1) {
    held.use = plugging.extension->id;
  }
  return held;
}

std::optional<Held> heldExtension(const site::Site& site, const ExtensionPlug& plug) {
  const site::ExtensionUse* use = site.find<site::ExtensionUse>(plug.use);
  if (use == nullptr) return std::nullopt;
  const site::Cord& cord = site.at<site::Cord>(use->cord);
  Held held{cord.make.plug, std::nullopt, use->hours, std::nullopt, cord.outOfService.has_value(),
            std::nullopt,   use->id};
  units::Length reach = study::lengthOf(cord.make).value;
  for (const site::Hookup* hookup : planning::usersOf(*use, site)) {
    const site::Inlet* inlet = site::inletOf(site, *hookup);
    if (inlet == nullptr) continue;
    held.place = hookup->place ? hookup->place : site.at<site::Machine>(hookup->machine).place;
    held.reach = reach + study::lengthOf(inlet->cord).value;
    if (!held.hours) held.hours = hookup->hours;
  }
  return held;
}

std::optional<Held> heldOf(const site::Site& site, const HeldPlug& plug) {
  if (const auto* machine = std::get_if<MachinePlug>(&plug)) return heldMachine(site, *machine);
  return heldExtension(site, std::get<ExtensionPlug>(plug));
}

bool isTaken(const site::Site& site, const Held& held, const site::OutletSocket& socket) {
  const site::Socket wanted = socket;
  for (const site::Hookup& hookup : site.all<site::Hookup>()) {
    if (hookup.id == held.hookup || hookup.socket != wanted) continue;
    if (rules::together(hookup.hours, held.hours)) return true;
  }
  for (const site::ExtensionUse& use : site.all<site::ExtensionUse>()) {
    if (use.id == held.use || use.socket != wanted) continue;
    if (rules::together(use.hours, held.hours)) return true;
  }
  for (const site::FixedLoad& load : site.all<site::FixedLoad>()) {
    if (load.outlet == socket.outlet && load.contact == socket.contact && !load.contact.empty()) return true;
  }
  return false;
}

// Nothing when a place or a length is not known.
std::optional<bool> isInReach(const Held& held, const site::Outlet& outlet) {
  if (!held.place || !outlet.place || !held.reach) return std::nullopt;
  if (held.place->floor != outlet.place->floor) return false;
  return geometry::rightAngleDistance(held.place->at, outlet.place->at) + planning::kSlack <= *held.reach;
}

TargetAnswer answerOf(const site::Site& site, const Held& held, const site::Outlet& outlet,
                      const site::Contact& contact) {
  if (held.outOfService) return TargetAnswer::OutOfService;
  if (isTaken(site, held, {outlet.id, contact.name})) return TargetAnswer::Taken;
  if (contact.blocked) return TargetAnswer::Blocked;
  if (contact.lockedCover) return TargetAnswer::Locked;
  if (contact.dead) return TargetAnswer::Dead;
  if (!planning::isUsable(contact, held.hours)) return TargetAnswer::Unreliable;
  const auto fits = tables::plugFits(held.plug, contact.receptacle);
  if (fits.has_value() && !*fits) return TargetAnswer::DoesNotFit;
  const site::Circuit* circuit = contact.assignment ? &site.at<site::Circuit>(contact.assignment->circuit) : nullptr;
  const site::UseClass use = site::useOf(contact, circuit);
  if (use == site::UseClass::Never) return TargetAnswer::Never;
  const auto inReach = isInReach(held, outlet);
  if (inReach.has_value() && !*inReach) return TargetAnswer::TooFar;
  if (use == site::UseClass::AskFirst) return TargetAnswer::AskFirst;
  return circuit != nullptr && fits.has_value() && inReach.has_value() ? TargetAnswer::Possible : TargetAnswer::Unknown;
}

}  // namespace

bool isPossible(TargetAnswer answer) { return answer == TargetAnswer::Possible || answer == TargetAnswer::Unknown; }

bool canBeTried(TargetAnswer answer) {
  switch (answer) {
    case TargetAnswer::Possible:
    case TargetAnswer::Unknown:
    case TargetAnswer::TooFar:
    case TargetAnswer::AskFirst:
    case TargetAnswer::Never:
    case TargetAnswer::Dead:
    case TargetAnswer::Unreliable:
    case TargetAnswer::DoesNotFit:
      return true;
    case TargetAnswer::Taken:
    case TargetAnswer::Blocked:
    case TargetAnswer::Locked:
    case TargetAnswer::OutOfService:
      return false;
  }
  return false;
}

std::string_view wordOf(TargetAnswer answer) {
  switch (answer) {
    case TargetAnswer::Possible:
      return "map.target.possible";
    case TargetAnswer::Unknown:
      return "map.target.unknown";
    case TargetAnswer::TooFar:
      return "map.target.too_far";
    case TargetAnswer::Taken:
      return "map.target.taken";
    case TargetAnswer::DoesNotFit:
      return "map.target.does_not_fit";
    case TargetAnswer::Dead:
      return "map.target.dead";
    case TargetAnswer::Unreliable:
      return "map.target.unreliable";
    case TargetAnswer::Blocked:
      return "map.target.blocked";
    case TargetAnswer::Locked:
      return "map.target.locked";
    case TargetAnswer::AskFirst:
      return "map.target.ask_first";
    case TargetAnswer::Never:
      return "map.target.never";
    case TargetAnswer::OutOfService:
      return "map.target.out_of_service";
  }
  return "map.target.possible";
}

TargetAnswer answerTo(const site::Site& site, const HeldPlug& plug, const site::OutletSocket& socket) {
  const auto held = heldOf(site, plug);
  const site::Outlet* outlet = site.find<site::Outlet>(socket.outlet);
  const site::Contact* contact = outlet != nullptr ? site::contactOf(site, socket) : nullptr;
  if (!held || contact == nullptr) return TargetAnswer::Blocked;
  return answerOf(site, *held, *outlet, *contact);
}

std::optional<OutletTarget> bestContact(const site::Site& site, const HeldPlug& plug, const site::Outlet& outlet,
                                        std::string_view preferred) {
  std::optional<OutletTarget> best;
  int bestRank = -1;
  for (const site::Contact& contact : outlet.contacts) {
    const TargetAnswer answer = answerTo(site, plug, {outlet.id, contact.name});
    const int rank = (canBeTried(answer) ? 4 : 0) + (isPossible(answer) ? 2 : 0) + (contact.name == preferred ? 1 : 0);
    if (rank <= bestRank) continue;
    best = OutletTarget{contact.name, answer};
    bestRank = rank;
  }
  return best;
}

}  // namespace cordreach::app
