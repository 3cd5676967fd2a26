// SPDX-License-Identifier: GPL-3.0-or-later
// Only a breaker at the quick end of what is sold would trip within a start.
#include "rules/all_rules.h"
#include "rules/start_finding.h"

namespace cordreach::rules {

Findings startTripsEarly(const Case& in, const Rule& rule) { return startsThat(StartVerdict::TripsEarly, in, rule); }

}  // namespace cordreach::rules
