// SPDX-License-Identifier: GPL-3.0-or-later
// The planned day cut where anything begins or ends: between two cuts the same things are on.
#pragma once

#include <optional>
#include <set>
#include <vector>

#include "site/site.h"
#include "units/quantity.h"

namespace cordreach::study {

struct Moment {
  std::optional<units::Duration> start;  // none: the state outside all hours
  std::vector<site::HookupId> hookups;   // plugged in and switched on
  std::vector<site::ExtensionUseId> extensions;
  std::vector<site::FixedLoadId> loads;

  friend bool operator==(const Moment&, const Moment&) = default;
};

// In order of time. The first is what is on outside all hours; when nothing has hours it is the only one.
[[nodiscard]] std::vector<Moment> momentsOf(const site::Site& site);

// What is on at that time of the planned day; none: outside all hours.
[[nodiscard]] Moment momentAt(const site::Site& site, const std::optional<units::Duration>& time);

// Where anything begins or ends, in order of time.
[[nodiscard]] std::set<units::Duration> cutsOf(const site::Site& site);

// How long one is judged for of which nobody says how long it runs: two hours (own: a long stretch of floor work).
[[nodiscard]] constexpr units::Duration unplannedRun() { return 2.0 * units::hour; }
// How long a hookup is judged for: its planned hours, or unplannedRun().
[[nodiscard]] units::Duration runOf(const site::Hookup& hookup);

}  // namespace cordreach::study
