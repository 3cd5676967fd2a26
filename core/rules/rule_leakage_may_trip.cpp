// SPDX-License-Identifier: GPL-3.0-or-later
// So much leaks together that a ground-fault device may trip.
#include "rules/all_rules.h"
#include "rules/leakage_verdict.h"

namespace cordreach::rules {

Findings leakageMayTrip(const Case& in, const Rule& rule) {
  return leakagesThat(physics::GroundFaultAnswer::MayTrip, in, rule);
}

}  // namespace cordreach::rules
