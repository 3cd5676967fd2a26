// SPDX-License-Identifier: GPL-3.0-or-later
// So much leaks together that a ground-fault device must trip.
#include "rules/all_rules.h"
#include "rules/leakage_verdict.h"

namespace cordreach::rules {

Findings leakageTrips(const Case& in, const Rule& rule) {
  return leakagesThat(physics::GroundFaultAnswer::Trips, in, rule);
}

}  // namespace cordreach::rules
