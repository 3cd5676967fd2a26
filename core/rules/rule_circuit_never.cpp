// SPDX-License-Identifier: GPL-3.0-or-later
// A machine on a circuit that serves nothing but what lives depend on, or at a socket that is marked so.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "rules/use_class.h"

namespace cordreach::rules {

Findings circuitNever(const Case& in, const Rule& rule) {
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    if (useOf(hookup) != site::UseClass::Never) continue;
    FindingBuilder finding(rule);
    finding.about(hookup, in);
    whyKept(finding, hookup);
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
