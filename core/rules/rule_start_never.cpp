// SPDX-License-Identifier: GPL-3.0-or-later
// Switched on, it never comes up to speed, although it would go on running if it once did.
#include "rules/all_rules.h"
#include "rules/drop_parts.h"
#include "rules/start_finding.h"

namespace cordreach::rules {

Findings startNever(const Case& in, const Rule& rule) {
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    const study::HookupAnswer& answer = *hookup.answer;
    // One that can't even run is told as stalled.
    if (!answer.start || answer.start->time.likely || answer.stalledCold || answer.stalledWarm) continue;
    FindingBuilder finding(rule);
    aboutStart(finding, hookup, in);
    whyDrop(finding, hookup);
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
