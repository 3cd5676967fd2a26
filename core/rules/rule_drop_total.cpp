// SPDX-License-Identifier: GPL-3.0-or-later
// Volts lost between the source and the outlet.
#include "rules/all_rules.h"
#include "rules/outlet_drop.h"

namespace cordreach::rules {

Findings dropTotal(const Case& in, const Rule& rule) {
  return outletsThatDrop(&study::HookupAnswer::outletDrop, in, rule);
}

}  // namespace cordreach::rules
