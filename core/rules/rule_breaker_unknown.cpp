// SPDX-License-Identifier: GPL-3.0-or-later
// More than the smallest usual breaker plans for, on a breaker nobody knows.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"

namespace cordreach::rules {

Findings breakerUnknown(const Case& in, const Rule& rule) {
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    if (hookup.contact == nullptr) continue;
    const bool unknown = hookup.circuit == nullptr || !hookup.circuit->rating;
    const units::Current plate = hookup.answer->socketPlateSum;
    if (!unknown || !exceeds(plate.in(units::ampere), rule.limitValue())) continue;
    FindingBuilder finding(rule);
    finding.about(hookup, in).with(amperes("plate_a", plate)).with(number("limit_a", rule.limitValue()));
    finding.why(hookup.circuit == nullptr ? "unknown.breaker" : "unknown.rating");
    finding.why("share.machine", {text("machine", hookup.machine->name), amperes("plate_a", plate)});
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
