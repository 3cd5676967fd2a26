// SPDX-License-Identifier: GPL-3.0-or-later
// A site's planned day, run: what happens when, which breaker trips, how warm every cord gets. By likely values; bands
// are `assess`'s and the chances'.
#pragma once

#include <optional>
#include <set>

#include "base/progress.h"
#include "site/site.h"
#include "study/day_course.h"
#include "timeline/day.h"
#include "units/quantity.h"

namespace cordreach::study {

struct DayRunOptions {
  units::Duration until = timeline::kLongestDay;  // its length
  std::optional<std::set<site::PanelId>> panels;  // none: all; else only what these feed, each with all it is fed from
  bool breakersAct = true;                        // false: they stay closed, and all goes on
  // After a likely trip: when the latest curve's would have been, by a day of its own in which only late breakers act.
  // Else as if what flowed at the likely trip went on.
  bool followLate = true;
  std::optional<units::Duration> sampleEvery{};
  base::Progress progress{};
};

[[nodiscard]] DayRun runDay(const site::Site& site, const DayRunOptions& options = {});

}  // namespace cordreach::study
