// SPDX-License-Identifier: GPL-3.0-or-later
// A motor that has no running point at the volts it gets, cold or once its cords are warm.
#include "rules/all_rules.h"
#include "rules/drop_parts.h"

namespace cordreach::rules {

Findings machineStall(const Case& in, const Rule& rule) {
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    const study::HookupAnswer& answer = *hookup.answer;
    if (!answer.stalledCold && !answer.stalledWarm) continue;
    FindingBuilder finding(rule);
    finding.about(hookup, in).with(text("when", answer.stalledCold ? "cold" : "warm"));
    finding.with(volts("voltage_v", answer.voltage.likely)).with(amperes("current_a", answer.current.likely));
    finding.happens(answer.stalledAt);
    whyDrop(finding, hookup);
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
