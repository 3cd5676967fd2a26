// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/moments.h"

namespace cordreach::study {

namespace {

bool isOn(const std::optional<site::Hours>& hours, const std::optional<units::Duration>& time) {
  if (!hours) return true;
  return time && hours->holds(*time);
}

}  // namespace

std::set<units::Duration> cutsOf(const site::Site& site) {
  std::set<units::Duration> cuts;
  const auto add = [&cuts](const std::optional<site::Hours>& hours) {
    if (!hours) return;
    cuts.insert(hours->from);
    cuts.insert(hours->until);
  };
  for (const auto& hookup : site.all<site::Hookup>()) add(hookup.hours);
  for (const auto& use : site.all<site::ExtensionUse>()) add(use.hours);
  for (const auto& load : site.all<site::FixedLoad>()) add(load.hours);
  for (const auto& outlet : site.all<site::Outlet>()) {
    for (const auto& contact : outlet.contacts) add(contact.poweredHours);
  }
  return cuts;
}

Moment momentAt(const site::Site& site, const std::optional<units::Duration>& time) {
  Moment moment;
  moment.start = time;
  for (const auto& hookup : site.all<site::Hookup>()) {
    if (isOn(hookup.hours, time)) moment.hookups.push_back(hookup.id);
  }
  for (const auto& use : site.all<site::ExtensionUse>()) {
    if (isOn(use.hours, time)) moment.extensions.push_back(use.id);
  }
  for (const auto& load : site.all<site::FixedLoad>()) {
    if (!load.off && isOn(load.hours, time)) moment.loads.push_back(load.id);
  }
  return moment;
}

std::vector<Moment> momentsOf(const site::Site& site) {
  std::vector<Moment> moments{momentAt(site, std::nullopt)};
  for (const units::Duration cut : cutsOf(site)) moments.push_back(momentAt(site, cut));
  return moments;
}

units::Duration runOf(const site::Hookup& hookup) { return hookup.hours ? hookup.hours->length() : unplannedRun(); }

}  // namespace cordreach::study
