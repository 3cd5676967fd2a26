// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/cord_plan.h"

#include <algorithm>

#include "planning/plug.h"
#include "site/queries.h"

namespace cordreach::planning {

namespace {

// The hookup asked about is pulled out, and the extension that only it used is put away.
void pullOut(const site::HookupId& asked, site::Site& site) {
  const site::Hookup* hookup = site.find<site::Hookup>(asked);
  if (hookup == nullptr) return;
  const Plugging plugging = pluggingOf(*hookup, site);
  if (plugging.extension != nullptr && usersOf(*plugging.extension, site).size() <= 1) {
    const site::ExtensionUseId use = plugging.extension->id;
    site.all<site::ExtensionUse>().remove(use);
  }
  site.all<site::Hookup>().remove(asked);
}

site::Site described(const CordQuestion& question) {
  site::Site site = *question.at->site;
  site.all<site::Event>() = {};
  site.all<site::Acceptance>() = {};
  site.all<site::HistoryEntry>() = {};
  if (question.at->hookup) pullOut(*question.at->hookup, site);
  return site;
}

bool isIn(const site::Socket& socket, const site::OutletSocket& wall) {
  const auto* there = std::get_if<site::OutletSocket>(&socket);
  return there != nullptr && *there == wall;
}

std::optional<std::string> plugIn(const site::OutletSocket& wall, const std::optional<site::Hours>& hours,
                                  const site::Site& site) {
  for (const site::Hookup& hookup : site.all<site::Hookup>()) {
    const auto chain = site::chainOf(site, hookup);
    if (!chain || chain->outlet != wall || !rules::together(hookup.hours, hours)) continue;
    return site.at<site::Machine>(hookup.machine).name;
  }
  return std::nullopt;
}

site::OutletSocket likeIt(const site::OutletSocket& wall, site::Site& site) {
  site::Outlet outlet = site.at<site::Outlet>(wall.outlet);
  site::Contact second = *site::contactOf(site, wall);
  while (site::contactOf(site, {wall.outlet, second.name}) != nullptr) second.name += '+';
  outlet.contacts.push_back(second);
  site.all<site::Outlet>().put(outlet);
  return {wall.outlet, second.name};
}

}  // namespace

CordPlan cordPlanOf(const CordQuestion& question) {
  CordPlan plan{described(question), {question.at->outlet, question.at->contact}};
  const auto inIt = [&](const auto& plugged) {
    return isIn(plugged.socket, plan.wall) && rules::together(plugged.hours, question.hours);
  };
  const auto& hookups = plan.site.all<site::Hookup>();
  const auto& uses = plan.site.all<site::ExtensionUse>();
  if (std::any_of(hookups.begin(), hookups.end(), inIt) || std::any_of(uses.begin(), uses.end(), inIt)) {
    plan.wall = likeIt(plan.wall, plan.site);
  }
  return plan;
}

std::optional<std::string> takenBy(const CordQuestion& question) {
  if (!question.at) return std::nullopt;
  return plugIn({question.at->outlet, question.at->contact}, question.hours, described(question));
}

bool isPlannedElsewhere(const CordQuestion& question, const site::CordId& cord) {
  if (question.cart == nullptr || !question.hours) return false;
  const site::Site& cart = *question.cart;
  for (const site::ExtensionUse& use : cart.all<site::ExtensionUse>()) {
    if (use.cord != cord) continue;
    if (use.hours && !rules::together(use.hours, question.hours)) continue;
    for (const site::Hookup* user : usersOf(use, cart)) {
      const bool own = question.at && question.at->hookup == user->id;
      if (!own && rules::together(user->hours, question.hours)) return true;
    }
  }
  return false;
}

void askAbout(const site::Machine& machine, const site::Inlet& inlet, CordQuestion& question) {
  question.name = machine.name;
  question.inlet = inlet;
  question.kind = machine.kind;
  question.shaftPower.reset();
  if (machine.shaftPower && machine.inlets.size() == 1) question.shaftPower = machine.shaftPower->value;
  question.doubleInsulated = machine.doubleInsulated;
  question.wet = machine.wet;
}

void askAbout(const site::Hookup& hookup, CordQuestion& question) {
  const site::Site& site = *question.at->site;
  askAbout(site.at<site::Machine>(hookup.machine), *site::inletOf(site, hookup), question);
  question.hours = hookup.hours;
  question.at->hookup = hookup.id;
}

}  // namespace cordreach::planning
