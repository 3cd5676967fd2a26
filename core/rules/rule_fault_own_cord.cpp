// SPDX-License-Identifier: GPL-3.0-or-later
// A fault at the machine burns the cord that came with it: a matter of the machine, which no choice of the plan made.
// Where it is the extension that burns by it, it is a matter of the plan too.
#include "rules/all_rules.h"
#include "rules/fault_verdict.h"

namespace cordreach::rules {

Findings faultOwnCord(const Case& in, const Rule& rule) {
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    const auto& cords = hookup.answer->cords;
    if (cords.empty() || cords.size() != hookup.chain.size()) continue;
    const auto& fault = cords.back().fault;
    if (verdictOn(fault) != FaultVerdict::LikelyLate) continue;
    // An extension that a fault at its own end burns already is told as that.
    if (fault->damaged + 1 < cords.size() && verdictOn(cords[fault->damaged].fault) == FaultVerdict::LikelyLate) {
      continue;
    }
    FindingBuilder finding(rule);
    finding.about(hookup.chain.back()).with(text("machine", hookup.machine->name));
    if (fault->damaged + 1 < cords.size()) {
      finding.about(hookup.chain[fault->damaged]).about(hookup, in);
    } else {
      if (hookup.outlet != nullptr) finding.about(*hookup.outlet);
      if (hookup.circuit != nullptr) finding.about(*hookup.circuit, in);
    }
    aboutFault(finding, *fault, hookup);
    found.push_back(finding.at(hookup.answer->moment).done());
  }
  return found;
}

}  // namespace cordreach::rules
