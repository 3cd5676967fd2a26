// SPDX-License-Identifier: GPL-3.0-or-later
// Wet work with no ground-fault device anywhere between the panel and the machine.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "rules/protection.h"

namespace cordreach::rules {

Findings wetUnprotected(const Case& in, const Rule& rule) {
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    if (!hookup.machine->wet) continue;
    const Protection protection = protectionOf(hookup, in.site());
    if (protection != Protection::None && protection != Protection::Unknown) continue;
    FindingBuilder finding(rule);
    finding.about(hookup, in);
    const bool unknown = protection == Protection::Unknown;
    found.push_back(finding.why(unknown ? "wet.protection_unknown" : "wet.no_device").done());
  }
  return found;
}

}  // namespace cordreach::rules
