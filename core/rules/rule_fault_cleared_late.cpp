// SPDX-License-Identifier: GPL-3.0-or-later
// Only a breaker at the slow end of what is sold lets a fault at an extension's end burn it.
#include "rules/all_rules.h"
#include "rules/fault_verdict.h"

namespace cordreach::rules {

Findings faultClearedLate(const Case& in, const Rule& rule) {
  return extensionsThat(FaultVerdict::LatestLate, in, rule);
}

}  // namespace cordreach::rules
