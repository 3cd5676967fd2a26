// SPDX-License-Identifier: GPL-3.0-or-later
// What the findings about a start tell alike: the machine, its amps as it starts and once it runs, and for how long.
#pragma once

#include "rules/finding_builder.h"

namespace cordreach::rules {

// The hookup's start must have been answered.
void aboutStart(FindingBuilder& finding, const HookupCase& hookup, const Case& in);
// Of something fixed that comes on by itself, beside those of the plan that are on its circuit then.
void aboutStart(FindingBuilder& finding, const study::LoadStart& start, const Case& in);

enum class StartVerdict {
  Holds,
  TripsEarly,  // only on the earliest curve
  Trips,       // on the likely one
};

[[nodiscard]] StartVerdict verdictOn(const study::StartAnswer& start);

// Starts of machines and of what comes on beside them that come to that. One that can't even run is told as stalled.
[[nodiscard]] Findings startsThat(StartVerdict verdict, const Case& in, const Rule& rule);

}  // namespace cordreach::rules
