// SPDX-License-Identifier: GPL-3.0-or-later
// A machine on a circuit that serves nothing but what lives depend on.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"

namespace cordreach::rules {

Findings circuitNever(const Case& in, const Rule& rule) {
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    if (hookup.circuit == nullptr || hookup.circuit->use != site::UseClass::Never) continue;
    FindingBuilder finding(rule);
    finding.about(hookup, in);
    found.push_back(finding.why("circuit.serves", {text("purpose", hookup.circuit->purpose)}).done());
  }
  return found;
}

}  // namespace cordreach::rules
