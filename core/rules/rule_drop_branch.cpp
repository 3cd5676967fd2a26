// SPDX-License-Identifier: GPL-3.0-or-later
// Volts lost between panel and outlet.
#include "rules/all_rules.h"
#include "rules/outlet_drop.h"

namespace cordreach::rules {

Findings dropBranch(const Case& in, const Rule& rule) {
  return outletsThatDrop(&study::HookupAnswer::branchDrop, in, rule);
}

}  // namespace cordreach::rules
