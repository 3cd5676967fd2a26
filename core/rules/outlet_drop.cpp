// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/outlet_drop.h"

#include <algorithm>

#include "rules/rule_table.h"

namespace cordreach::rules {

namespace {

// The branch is part of the whole way: where all of it is told, its part is not told again.
bool losesTooMuchInAll(const HookupCase& hookup) {
  const study::HookupAnswer& answer = *hookup.answer;
  return exceeds(answer.outletDrop / answer.nominal, ruleOf("drop.total").limitFraction());
}

bool sameContact(const HookupCase& a, const HookupCase& b) { return a.contact == b.contact; }

}  // namespace

Findings outletsThatDrop(units::Voltage study::HookupAnswer::*drop, const Case& in, const Rule& rule) {
  std::vector<const HookupCase*> worst;
  for (const HookupCase& hookup : in.hookups()) {
    if (hookup.contact == nullptr || hookup.answer->nominal.si() <= 0.0) continue;
    const double fraction = hookup.answer->*drop / hookup.answer->nominal;
    if (!exceeds(fraction, rule.limitFraction())) continue;
    if (drop == &study::HookupAnswer::branchDrop && losesTooMuchInAll(hookup)) continue;
    const auto known =
        std::find_if(worst.begin(), worst.end(), [&](const HookupCase* other) { return sameContact(*other, hookup); });
    if (known == worst.end()) {
      worst.push_back(&hookup);
    } else if (hookup.answer->*drop > (*known)->answer->*drop) {
      *known = &hookup;
    }
  }
  Findings found;
  for (const HookupCase* hookup : worst) {
    const study::HookupAnswer& answer = *hookup->answer;
    FindingBuilder finding(rule);
    finding.about(*hookup->outlet).about(*hookup, in);
    for (const HookupCase& other : in.hookups()) {
      if (sameContact(other, *hookup) && other.answer->*drop / answer.nominal > rule.limitFraction()) {
        finding.colours(other);
      }
    }
    finding.with(volts("drop_v", answer.*drop)).with(number("limit_percent", rule.limitValue()));
    finding.with(number("drop_percent", 100.0 * (answer.*drop / answer.nominal)));
    const double own = std::clamp(answer.dropWithoutOthers / answer.outletDrop, 0.0, 1.0);
    finding.why("drop.own_current", {text("machine", hookup->machine->name)}, own);
    found.push_back(finding.why("drop.other_loads", {}, 1.0 - own).done());
  }
  return found;
}

}  // namespace cordreach::rules
