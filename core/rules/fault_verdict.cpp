// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/fault_verdict.h"

#include "physics/touch_limits.h"

namespace cordreach::rules {

namespace {

// The fault of that link, at the worst among those who hang on it.
const study::FaultAnswer* worstFault(const CordCase& cord) {
  const study::FaultAnswer* worst = nullptr;
  for (const HookupCase* user : cord.users) {
    const std::size_t count = std::min(user->chain.size(), user->answer->cords.size());
    for (std::size_t back = 1; back <= count; ++back) {
      const Link& link = user->chain[user->chain.size() - back];
      const auto& fault = user->answer->cords[user->answer->cords.size() - back].fault;
      if (link.use != cord.link.use || link.hookup != cord.link.hookup || !fault) continue;
      if (worst == nullptr || verdictOn(fault) > verdictOn(*worst)) worst = &*fault;
    }
  }
  return worst;
}

}  // namespace

FaultVerdict verdictOn(const std::optional<study::FaultAnswer>& fault) {
  if (!fault || !fault->claimed) return FaultVerdict::Cleared;
  if (fault->likelyLate) return FaultVerdict::LikelyLate;
  return fault->latestLate ? FaultVerdict::LatestLate : FaultVerdict::Cleared;
}

void aboutFault(FindingBuilder& finding, const study::FaultAnswer& fault, const HookupCase& hookup) {
  if (fault.current) {
    finding.with(amperes("fault_a", fault.current->likely));
    finding.with(amperes("fault_low_a", fault.current->low)).with(amperes("fault_high_a", fault.current->high));
    finding.why("fault.current", {amperes("fault_a", fault.current->likely)});
  }
  finding.with(celsius("limit_c", physics::conductorShortCircuit().value));
  if (fault.conductor) finding.with(celsius("conductor_c", fault.conductor->likely));
  if (fault.cleared.likely) finding.with(seconds("likely_s", *fault.cleared.likely));
  if (fault.cleared.latest) finding.with(seconds("latest_s", *fault.cleared.latest));
  if (fault.damage) finding.with(seconds("damage_s", *fault.damage));
  if (hookup.circuit != nullptr && hookup.circuit->mayNotTrip) finding.why("fault.breaker_may_not_act");
  if (hookup.circuit == nullptr || !hookup.circuit->rating) finding.why("fault.breaker_taken_as_twenty");
}

Findings extensionsThat(FaultVerdict verdict, const Case& in, const Rule& rule) {
  Findings found;
  for (const CordCase& cord : in.cords()) {
    if (cord.link.own()) continue;
    const study::FaultAnswer* fault = worstFault(cord);
    if (fault == nullptr || verdictOn(*fault) != verdict) continue;
    FindingBuilder finding(rule);
    finding.about(cord.link).about(*cord.at, in).colours(cord.users);
    aboutFault(finding, *fault, *cord.at);
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
