// SPDX-License-Identifier: GPL-3.0-or-later
// The likely curve trips while the current lasts.
#include "rules/all_rules.h"
#include "rules/breaker_verdict.h"

namespace cordreach::rules {

Findings breakerTrips(const Case& in, const Rule& rule) { return breakersThat(study::WithinRun::Trips, in, rule); }

}  // namespace cordreach::rules
