// SPDX-License-Identifier: GPL-3.0-or-later
// The likely curve trips before the machine has come up to speed, at the likely end of its start.
#include "rules/all_rules.h"
#include "rules/start_finding.h"

namespace cordreach::rules {

Findings startTrips(const Case& in, const Rule& rule) { return startsThat(StartVerdict::Trips, in, rule); }

}  // namespace cordreach::rules
