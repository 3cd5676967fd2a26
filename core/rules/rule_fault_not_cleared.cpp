// SPDX-License-Identifier: GPL-3.0-or-later
// A fault at an extension's end burns the extension before a breaker of the usual kind acts.
#include "rules/all_rules.h"
#include "rules/fault_verdict.h"

namespace cordreach::rules {

Findings faultNotCleared(const Case& in, const Rule& rule) {
  return extensionsThat(FaultVerdict::LikelyLate, in, rule);
}

}  // namespace cordreach::rules
