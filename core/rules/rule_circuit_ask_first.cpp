// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody else's circuit or socket, used before he was asked.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "rules/use_class.h"

namespace cordreach::rules {

Findings circuitAskFirst(const Case& in, const Rule& rule) {
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    if (useOf(hookup) != site::UseClass::AskFirst || hookup.hookup->asked) continue;
    FindingBuilder finding(rule);
    finding.about(hookup, in);
    if (hookup.circuit != nullptr) finding.with(text("ask", hookup.circuit->askWhom));
    whyKept(finding, hookup);
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
