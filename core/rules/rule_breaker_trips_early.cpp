// SPDX-License-Identifier: GPL-3.0-or-later
// Only a breaker at the quick end of what is sold would trip.
#include "rules/all_rules.h"
#include "rules/breaker_verdict.h"

namespace cordreach::rules {

Findings breakerTripsEarly(const Case& in, const Rule& rule) {
  return breakersThat(study::WithinRun::TripsEarly, in, rule);
}

}  // namespace cordreach::rules
