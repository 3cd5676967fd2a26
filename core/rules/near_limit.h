// SPDX-License-Identifier: GPL-3.0-or-later
// Circuits that have little left for a machine, and what has taken it: a list for whoever looks after the building.
// It colours no hookup: nothing here is wrong, there is only little room.
#pragma once

#include <string_view>
#include <vector>

#include "rules/finding.h"
#include "site/site.h"
#include "study/answer.h"

namespace cordreach::rules {

enum class NearLimitReason {
  Loaded,     // fixed loads that last take most of what the code plans
  Together,   // fixed loads that can come on together do
  BeforeAny,  // half is gone before the first machine is plugged in
  AllNight,   // something runs for hours on end
};

struct NearLimit {
  site::CircuitId circuit;
  NearLimitReason reason;
  units::Current load;      // of the fixed loads, all on
  double loadPercent;       // of the rating
  std::vector<Reason> why;  // the loads, largest first; never empty
};

// Fullest first. Circuits of the use class "never" are left out: nothing may be added to them anyway.
[[nodiscard]] std::vector<NearLimit> nearLimit(const site::Site& site);

[[nodiscard]] std::string_view nameOf(NearLimitReason reason);  // "loaded", "together", "before_any", "all_night"

}  // namespace cordreach::rules
