// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/day_span.h"

#include <algorithm>

#include "site/queries.h"
#include "study/moments.h"
#include "timeline/day.h"

namespace cordreach::study {

namespace {

using units::Duration;

// Nobody knows which panel feeds it: whichever it is supposed on.
bool mayBeFedBy(const site::Site& site, const std::set<site::PanelId>& panels, const site::Hookup& hookup) {
  const auto chain = site::chainOf(site, hookup);
  if (!chain) return false;
  const site::Circuit* circuit = site::circuitOf(site, chain->outlet);
  return circuit == nullptr || panels.contains(circuit->panel);
}

// Without hours it is judged for as long as one that nobody planned, from the last thing that happens on.
Duration endOf(const site::Site& site) {
  Duration end{};
  bool untimed = false;
  for (const auto& hookup : site.all<site::Hookup>()) {
    if (hookup.hours) end = std::max(end, hookup.hours->until);
    untimed |= !hookup.hours;
  }
  for (const auto& event : site.all<site::Event>()) {
    end = std::max(end, untimed ? event.at + unplannedRun() : event.at);
  }
  return end;
}

}  // namespace

Duration dayStartOf(const site::Site& site) {
  std::optional<Duration> first;
  const auto consider = [&first](Duration time) { first = std::min(first.value_or(time), time); };
  for (const auto& hookup : site.all<site::Hookup>()) {
    if (hookup.hours) consider(hookup.hours->from);
  }
  for (const auto& event : site.all<site::Event>()) consider(event.at);
  if (first) return *first;
  for (const auto& load : site.all<site::FixedLoad>()) {
    if (load.hours) consider(load.hours->from);
  }
  return first.value_or(Duration{});
}

bool changesInTime(const site::Site& site, const site::Hookup& hookup) {
  return hookup.hours.has_value() || !site.all<site::Event>().empty();
}

std::optional<DaySpan> daySpanOf(const site::Site& site, const PanelFamilies& families) {
  DaySpan span;
  const auto& hookups = site.all<site::Hookup>();
  for (const auto& [root, panels] : families) {
    const bool any = std::any_of(hookups.begin(), hookups.end(), [&, &fed = panels](const site::Hookup& hookup) {
      return changesInTime(site, hookup) && mayBeFedBy(site, fed, hookup);
    });
    if (any) span.panels.insert(panels.begin(), panels.end());
  }
  span.until = std::min(timeline::kLongestDay, endOf(site) - dayStartOf(site));
  if (span.panels.empty() || !(span.until > Duration{})) return std::nullopt;
  return span;
}

}  // namespace cordreach::study
