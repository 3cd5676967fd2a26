// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody else's circuit, used before he was asked.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"

namespace cordreach::rules {

Findings circuitAskFirst(const Case& in, const Rule& rule) {
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    if (hookup.circuit == nullptr || hookup.circuit->use != site::UseClass::AskFirst || hookup.hookup->asked) continue;
    FindingBuilder finding(rule);
    finding.about(hookup, in).with(text("ask", hookup.circuit->askWhom));
    found.push_back(finding.why("circuit.serves", {text("purpose", hookup.circuit->purpose)}).done());
  }
  return found;
}

}  // namespace cordreach::rules
