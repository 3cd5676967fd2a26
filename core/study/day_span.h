// SPDX-License-Identifier: GPL-3.0-or-later
// What of a site is worth following through the planned day, and from when to when: what has hours, or changes by an
// event. All else is the same at any time, and known from a single moment.
#pragma once

#include <optional>
#include <set>

#include "site/site.h"
#include "study/panel_family.h"
#include "units/quantity.h"

namespace cordreach::study {

// When a run through the day begins: with the first hour of a hookup or the first event; without either with the first
// hour of a fixed load, else at midnight.
[[nodiscard]] units::Duration dayStartOf(const site::Site& site);

// It has hours, or events happen and may concern it.
[[nodiscard]] bool changesInTime(const site::Site& site, const site::Hookup& hookup);

struct DaySpan {
  std::set<site::PanelId> panels;  // that feed what changes in time, with all that shares their source
  units::Duration until{};         // from dayStartOf to the end of the last hookup, at most timeline::kLongestDay
};

// Among these families. None: nothing changes in time.
[[nodiscard]] std::optional<DaySpan> daySpanOf(const site::Site& site, const PanelFamilies& families);

}  // namespace cordreach::study
