// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/plug_edits.h"

#include <algorithm>
#include <random>
#include <utility>

#include "planning/plug.h"
#include "site/events.h"
#include "site/new_id.h"

namespace cordreach::app {
namespace {

// The edit, when the site takes it.
EditResult tried(const site::Site& site, site::Edit edit) {
  site::Site copy = site;
  const auto done = site::apply(edit, copy);
  if (!done) return done.error();
  return edit;
}

// From the thing itself, so that the same deed tried twice is one edit: a drag supposes many times and applies once.
site::RandomSource numbersFrom(const std::string& stem) {
  std::seed_seq seed(stem.begin(), stem.end());
  return [engine = std::mt19937_64(seed)]() mutable { return engine(); };
}

base::Error missing(const std::string& id) { return {"plug.no_longer_there", id, {}}; }

template <class T, class Alter>
EditResult altered(const site::Site& site, const decltype(T::id)& id, std::string code, Alter&& alter) {
  const T* before = site.find<T>(id);
  if (before == nullptr) return missing(id.text());
  T after = *before;
  alter(after);
  return tried(site, {std::move(code), {site::Change<T>{*before, std::move(after)}}});
}

EditResult hookUp(const site::Site& site, const MachinePlug& plug, const site::OutletSocket& socket) {
  const site::Machine* machine = site.find<site::Machine>(plug.machine);
  if (machine == nullptr) return missing(plug.machine.text());
  const auto random = numbersFrom(plug.machine.text() + "/" + plug.inlet);
  site::Hookup hookup{site::newId<site::Hookup>(site, random), plug.machine, plug.inlet, socket};
  hookup.place = machine->place;
  return tried(site, {"hookup.add", {site::Change<site::Hookup>{std::nullopt, std::move(hookup)}}});
}

EditResult moveMachinePlug(const site::Site& site, const MachinePlug& plug, const site::OutletSocket& socket) {
  if (!plug.hookup) return hookUp(site, plug, socket);
  const site::Hookup* hookup = site.find<site::Hookup>(*plug.hookup);
  if (hookup == nullptr) return missing(plug.hookup->text());
  const auto plugging = planning::pluggingOf(*hookup, site);
  return tried(site, {"hookup.move", planning::replug(plugging, socket, site)});
}

bool isTaken(const site::Site& site, const site::OutletSocket& socket, const std::optional<site::Hours>& hours) {
  const auto holds = [&](const auto& use) {
    return use.socket == site::Socket{socket} && rules::together(use.hours, hours);
  };
  const auto& hookups = site.all<site::Hookup>();
  const auto& uses = site.all<site::ExtensionUse>();
  return std::any_of(hookups.begin(), hookups.end(), holds) || std::any_of(uses.begin(), uses.end(), holds);
}

// The site after the first steps of an edit that is still being made.
site::Site after(const site::Site& site, const std::vector<site::AnyChange>& changes) {
  site::Site copy = site;
  for (const site::AnyChange& change : changes) {
    if (const auto* use = std::get_if<site::Change<site::ExtensionUse>>(&change); use != nullptr && !use->after) {
      copy.all<site::ExtensionUse>().remove(use->before->id);
    }
    if (const auto* hookup = std::get_if<site::Change<site::Hookup>>(&change)) {
      copy.all<site::Hookup>().remove(hookup->before->id);
    }
  }
  return copy;
}

std::optional<site::OutletSocket> freeContact(const site::Site& site, const planning::Plugging& plugging) {
  const site::OutletSocket same{plugging.outlet->id, plugging.contact->name};
  if (!isTaken(site, same, plugging.hookup->hours)) return same;
  for (const site::Contact& contact : plugging.outlet->contacts) {
    const site::OutletSocket other{plugging.outlet->id, contact.name};
    if (!isTaken(site, other, plugging.hookup->hours)) return other;
  }
  return std::nullopt;
}

}  // namespace

EditResult plugInto(const site::Site& site, const HeldPlug& plug, const site::OutletSocket& socket) {
  if (const auto* machine = std::get_if<MachinePlug>(&plug)) return moveMachinePlug(site, *machine, socket);
  return altered<site::ExtensionUse>(site, std::get<ExtensionPlug>(plug).use, "extension.move",
                                     [&](site::ExtensionUse& use) { use.socket = socket; });
}

EditResult unplug(const site::Site& site, const site::HookupId& id) {
  const site::Hookup* hookup = site.find<site::Hookup>(id);
  if (hookup == nullptr) return missing(id.text());
  const auto plugging = planning::pluggingOf(*hookup, site);
  auto changes = planning::replug(plugging, hookup->socket, site);
  changes.front() = site::Change<site::Hookup>{*hookup, std::nullopt};
  const auto gone = site::eventsGoneWith(site, id);
  changes.insert(changes.end(), gone.begin(), gone.end());
  return tried(site, {"hookup.remove", std::move(changes)});
}

EditResult putCordBetween(const site::Site& site, const site::HookupId& id, const std::optional<site::CordId>& wanted) {
  const site::Hookup* hookup = site.find<site::Hookup>(id);
  if (hookup == nullptr) return missing(id.text());
  const auto plugging = planning::pluggingOf(*hookup, site);
  if (plugging.outlet == nullptr || plugging.contact == nullptr) return base::Error{"plug.hangs_in_the_air", {}, {}};
  auto changes = planning::replug(plugging, hookup->socket, site);
  const auto socket = freeContact(after(site, changes), plugging);
  if (!socket) return base::Error{"plug.no_free_contact", plugging.outlet->label, {}};
  if (!wanted) {
    changes = planning::replug(plugging, *socket, site);
    return tried(site, {"hookup.cord", std::move(changes)});
  }
  const site::Cord* cord = site.find<site::Cord>(*wanted);
  if (cord == nullptr) return missing(wanted->text());
  changes = planning::replug(plugging, site::CordSocket{cord->id, 0}, site);
  const bool same = changes.size() > 1 && plugging.cord == cord;
  if (same) return base::Error{"plug.already_so", cord->label, {}};
  changes.emplace_back(site::Change<site::ExtensionUse>{std::nullopt, planning::newUse(*cord, *hookup, *socket, site)});
  return tried(site, {"hookup.cord", std::move(changes)});
}

EditResult layExtension(const site::Site& site, const site::ExtensionUseId& use, const site::LayingOfCord& laying) {
  return altered<site::ExtensionUse>(site, use, "cord.lay", [&](site::ExtensionUse& one) { one.laying = laying; });
}

EditResult layOwnCord(const site::Site& site, const site::HookupId& hookup, const site::LayingOfCord& laying) {
  return altered<site::Hookup>(site, hookup, "cord.lay", [&](site::Hookup& one) { one.ownCord = laying; });
}

EditResult switchMachine(const site::Site& site, const site::HookupId& hookup, bool off) {
  return altered<site::Hookup>(site, hookup, "hookup.switch", [&](site::Hookup& one) { one.off = off; });
}

EditResult switchLoad(const site::Site& site, const site::FixedLoadId& load, bool off) {
  return altered<site::FixedLoad>(site, load, "load.switch", [&](site::FixedLoad& one) { one.off = off; });
}

EditResult changePad(const site::Site& site, const site::HookupId& hookup, const std::optional<site::PadId>& pad) {
  return altered<site::Hookup>(site, hookup, "hookup.pad", [&](site::Hookup& one) { one.pad = pad; });
}

}  // namespace cordreach::app
