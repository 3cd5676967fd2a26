// SPDX-License-Identifier: GPL-3.0-or-later
// What is not known about a hookup and could change its verdict. Never silent: an unknown is judged at its cautious
// end, and this says so.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "rules/rule_table.h"
#include "rules/voltage_limits.h"

namespace cordreach::rules {

namespace {

void judgeBreaker(const HookupCase& hookup, FindingBuilder& finding, bool& any) {
  const auto say = [&](const char* code, base::Arguments arguments = {}) {
    finding.why(code, std::move(arguments));
    any = true;
  };
  if (hookup.contact == nullptr) {
    say("unknown.outlet");
    return;
  }
  if (hookup.contact->switched) say("contact.switched");
  if (hookup.circuit == nullptr) {
    say("unknown.breaker");
    return;
  }
  if (!hookup.circuit->rating) say("unknown.rating");
  if (hookup.contact->assignment->how != site::HowKnown::Traced) say("unknown.assignment");
}

void judgeMachine(const HookupCase& hookup, const site::Site& site, FindingBuilder& finding, bool& any) {
  if (!hookup.inlet->plate) {
    finding.why("unknown.plate", {text("machine", hookup.machine->name)});
    any = true;
  }
  const auto& pad = hookup.hookup->pad ? hookup.hookup->pad : hookup.machine->pad;
  if (pad && hookup.machine->speed && !site.at<site::Pad>(*pad).ratedSpeed) {
    finding.why("unknown.pad_speed", {text("pad", site.at<site::Pad>(*pad).name)});
    any = true;
  }
}

void judgeCords(const HookupCase& hookup, FindingBuilder& finding, bool& any) {
  for (const Link& link : hookup.chain) {
    const std::string name = link.own() ? link.machine->name : link.cord->label;
    if (!link.make().size) {
      finding.why(link.own() ? "unknown.own_cord_size" : "unknown.cord_size", {text("cord", name)});
      any = true;
    }
    if (!link.own() && !link.make().printReadable && !link.make().rating) {
      finding.why("unknown.cord_rating", {text("cord", name)});
      any = true;
    }
  }
}

// Lengths and the like are guesses with a band; they matter when the band reaches over a limit that the likely value
// keeps.
void judgeBand(const HookupCase& hookup, const Rule& voltage, FindingBuilder& finding, bool& any) {
  const study::HookupAnswer& answer = *hookup.answer;
  if (hookup.contact == nullptr || answer.current.likely.si() <= 0.0) return;
  const VoltageLimits limits = voltageLimitsOf(*hookup.inlet, answer.nominal, voltage.limitFraction());
  const bool crossesLow = answer.voltage.likely >= limits.low && answer.voltage.low < limits.low;
  const bool crossesHigh = answer.voltage.likely <= limits.high && answer.voltage.high > limits.high;
  if (!crossesLow && !crossesHigh) return;
  finding.with(volts("voltage_v", answer.voltage.likely));
  finding.why("unknown.run", {volts("voltage_low_v", answer.voltage.low), volts("voltage_high_v", answer.voltage.high),
                              volts("limit_v", crossesLow ? limits.low : limits.high)});
  any = true;
}

}  // namespace

Findings unknownMatters(const Case& in, const Rule& rule) {
  const Rule& voltage = ruleOf("machine.voltage");
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    FindingBuilder finding(rule);
    bool any = false;
    judgeBreaker(hookup, finding, any);
    judgeMachine(hookup, in.site(), finding, any);
    judgeCords(hookup, finding, any);
    judgeBand(hookup, voltage, finding, any);
    if (any) found.push_back(finding.about(hookup, in).done());
  }
  return found;
}

}  // namespace cordreach::rules
