// SPDX-License-Identifier: GPL-3.0-or-later
// The planned day of a site in the timeline's terms: every hour, event, cycle and charge as switching at a time.
// The run begins with the first hour of a hookup or the first event; without either with the first hour of a fixed
// load, else at midnight. Fixed loads without hours or cycle have been on for long before; a hookup without hours comes
// on as the run begins and stays on. What cycles comes on at the time that is known, and every period before and after;
// nobody knows: half an off-time after the run begins (own; at worst everything that cycles is on together, as `assess`
// has it). A charger's taper goes in twelve steps of equal length. A pulled plug, a machine switched off, a pad, how a
// cord lies, a controlled contact and a load switched by hand follow the site's events from their time on.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <vector>

#include "site/site.h"
#include "study/day_course.h"
#include "timeline/day.h"

namespace cordreach::study {

struct DayPlan {
  timeline::Day day;
  units::Duration start{};                            // time of the planned day
  std::map<timeline::LoadPlace, DaySubject> loads;    // hookups and fixed loads
  std::vector<std::optional<DaySubject>> conductors;  // [conductor]; none: wire in a wall
  std::vector<DaySubject> protectedPoles;             // [protected]: circuits and outlets
  std::vector<site::FixedLoadId> guessedCycles;       // nobody knows when these come on
};

// `until`: how long the run is, up to timeline::kLongestDay. `panels`: what is wired; none: all.
[[nodiscard]] DayPlan dayPlanOf(const site::Site& site, units::Duration until,
                                const std::optional<std::set<site::PanelId>>& panels = {});

}  // namespace cordreach::study
