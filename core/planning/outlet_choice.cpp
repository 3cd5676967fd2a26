// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/outlet_choice.h"

#include <algorithm>

#include "planning/circuit_users.h"
#include "planning/plug_start.h"
#include "rules/finding_builder.h"
#include "rules/protection.h"
#include "rules/ratings.h"
#include "rules/sockets.h"
#include "site/queries.h"
#include "study/assumptions.h"
#include "tables/code_limits.h"
#include "tables/receptacles.h"

namespace cordreach::planning {

namespace {

// Own: going through a door counts as this much farther.
constexpr units::Length kOtherRoom = 3.0 * units::metre;

const site::Place* workPlace(const Plugging& plugging) {
  if (plugging.hookup->place) return &*plugging.hookup->place;
  if (plugging.machine->place) return &*plugging.machine->place;
  if (plugging.outlet != nullptr && plugging.outlet->place) return &*plugging.outlet->place;
  return nullptr;
}

bool takesPlug(const site::Socket& socket, const site::OutletId& outlet, const std::string& contact) {
  const auto* there = std::get_if<site::OutletSocket>(&socket);
  return there != nullptr && there->outlet == outlet && there->contact == contact;
}

bool isBusy(const site::Outlet& outlet, const site::Contact& contact, const Plugging& plugging,
            const site::Site& site) {
  const auto& hours = plugging.hookup->hours;
  for (const site::Hookup& other : site.all<site::Hookup>()) {
    if (other.id == plugging.hookup->id || !takesPlug(other.socket, outlet.id, contact.name)) continue;
    if (rules::together(other.hours, hours)) return true;
  }
  for (const site::ExtensionUse& use : site.all<site::ExtensionUse>()) {
    if (&use == plugging.extension && usersOf(use, site).size() <= 1) continue;  // put away with the move
    if (takesPlug(use.socket, outlet.id, contact.name) && rules::together(use.hours, hours)) return true;
  }
  for (const site::FixedLoad& load : site.all<site::FixedLoad>()) {
    if (load.outlet == outlet.id && load.contact == contact.name && !load.contact.empty()) return true;
  }
  return false;
}

// Plates of what else may be on then.
units::Current othersOn(const site::Circuit& circuit, const Plugging& plugging, const site::Site& site) {
  units::Current sum;
  for (const CircuitUser& user : circuitUsers(site, circuit.id, plugging.hookup->hours, plugging.hookup->id)) {
    sum += user.plate;
  }
  return sum;
}

bool hasRoom(const site::Circuit& circuit, const site::Contact& contact, const Plugging& plugging,
             const site::Site& site) {
  const units::Current plate = study::plateOf(*plugging.inlet);
  const units::Current rating = circuit.rating->value;
  if (rules::receptaclesOn(site, circuit.id) > 1) {
    if (rules::exceeds(plate.si(), rating.si() * tables::portableShare().value)) return false;
    const auto receptacle = rules::receptacleRating(contact.receptacle);
    const auto limit = receptacle ? tables::cordAndPlugLimit(*receptacle) : std::nullopt;
    if (limit && rules::exceeds(plate.si(), limit->value.si())) return false;
  }
  return !rules::exceeds((plate + othersOn(circuit, plugging, site)).si(), rating.si());
}

bool suits(const site::Outlet& outlet, const site::Contact& contact, const Plugging& plugging, const site::Site& site,
           const OutletWish& wish) {
  if (!contact.assignment || !isUsable(contact, plugging.hookup->hours)) return false;
  const site::Circuit& circuit = site.at<site::Circuit>(contact.assignment->circuit);
  if (site::useOf(contact, &circuit) != site::UseClass::Ordinary || !circuit.rating || circuit.id == wish.notOn)
    return false;
  if (!wish.plug.empty() && !tables::plugFits(wish.plug, contact.receptacle).value_or(false)) return false;
  if (wish.needsProtection) {
    const auto protection = rules::protectionAt(outlet, contact, site);
    if (protection == rules::Protection::None || protection == rules::Protection::Unknown) return false;
  }
  return !isBusy(outlet, contact, plugging, site) && hasRoom(circuit, contact, plugging, site);
}

}  // namespace

bool worksAtKnownPlace(const Plugging& plugging) {
  return plugging.hookup->place.has_value() || plugging.machine->place.has_value();
}

std::optional<units::Length> neededCord(const Plugging& plugging, const site::Outlet& outlet) {
  const site::Place* work = workPlace(plugging);
  if (work == nullptr || !outlet.place || outlet.place->floor != work->floor) return {};
  const units::Length needed = geometry::rightAngleDistance(work->at, outlet.place->at) + kSlack;
  if (worksAtKnownPlace(plugging) || plugging.cord == nullptr) return needed;
  return needed + study::lengthOf(plugging.cord->make).value;
}

std::vector<OutletChoice> outletsFor(const Plugging& plugging, const site::Site& site, const OutletWish& wish) {
  std::vector<std::pair<units::Length, OutletChoice>> ranked;
  for (const site::Outlet& outlet : site.all<site::Outlet>()) {
    if (&outlet == plugging.outlet && plugging.extension == nullptr) continue;
    const auto needed = neededCord(plugging, outlet);
    if (!needed || (wish.reach && *needed > *wish.reach)) continue;
    const auto contact = std::find_if(outlet.contacts.begin(), outlet.contacts.end(), [&](const site::Contact& one) {
      return suits(outlet, one, plugging, site, wish);
    });
    if (contact == outlet.contacts.end()) continue;
    const bool sameRoom = plugging.outlet != nullptr && plugging.outlet->room == outlet.room;
    ranked.push_back({sameRoom ? *needed : *needed + kOtherRoom, {&outlet, &*contact, *needed}});
  }
  std::stable_sort(ranked.begin(), ranked.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<OutletChoice> choices;
  for (const auto& [cost, choice] : ranked) choices.push_back(choice);
  return choices;
}

}  // namespace cordreach::planning
