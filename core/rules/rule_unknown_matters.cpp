// SPDX-License-Identifier: GPL-3.0-or-later
// What is not known about a hookup and could change its verdict. Never silent: where nothing is known a cautious value
// stands, where there is a band its likely value, and this says where the rest of the band crosses a limit.
#include <algorithm>

#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "rules/rule_table.h"
#include "rules/voltage_limits.h"
#include "study/machine_plate.h"
#include "study/pad_in_use.h"

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

// A generator or an inverter limits its own current, so that no clearing of a fault is claimed of its breakers.
void judgeFault(const HookupCase& hookup, FindingBuilder& finding, bool& any) {
  const auto limited = [](const study::CordAnswer& cord) { return cord.fault && !cord.fault->claimed; };
  if (hookup.answer->cords.empty() || !limited(hookup.answer->cords.back())) return;
  finding.why("unknown.fault_clearing");
  any = true;
}

void judgeMachine(const HookupCase& hookup, const site::Site& site, FindingBuilder& finding, bool& any) {
  if (!hookup.inlet->plate) {
    finding.why("unknown.plate", {text("machine", hookup.machine->name)});
    any = true;
  }
  const site::Pad* pad = study::padInUse(site, *hookup.hookup);
  if (pad != nullptr && hookup.machine->speed && !study::ratedRpmOf(*pad)) {
    finding.why("unknown.pad_speed", {text("pad", pad->name)});
    any = true;
  }
  const physics::Nameplate plate = study::nameplateOf(site, *hookup.hookup, hookup.answer->nominal);
  if (study::padDragOf(site, *hookup.hookup, plate).guessed) {
    finding.why("unknown.friction", {text("pad", pad->name)});
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

void judgeStall(const HookupCase& hookup, FindingBuilder& finding, bool& any) {
  const study::HookupAnswer& answer = *hookup.answer;
  if (!answer.stalledAdverse || answer.stalledCold || answer.stalledWarm) return;
  finding.why("unknown.stall", {volts("voltage_low_v", answer.voltage.low)});
  any = true;
}

// How a cord cools is never known closely, and what lies on it even less. Where the worse end stalls, it is hot by
// that.
void judgeHeat(const HookupCase& hookup, units::Temperature handled, FindingBuilder& finding, bool& any) {
  const auto& cords = hookup.answer->cords;
  if (hookup.answer->stalledAdverse) return;
  for (std::size_t back = 1; back <= std::min(cords.size(), hookup.chain.size()); ++back) {
    const study::CordAnswer& cord = cords[cords.size() - back];
    const Link& link = hookup.chain[hookup.chain.size() - back];
    const auto name = text("cord", link.own() ? link.machine->name : link.cord->label);
    const char* const kind = link.own() ? "own" : "extension";
    if (cord.conductor && cord.conductor->likely <= cord.limit && cord.conductor->high > cord.limit) {
      finding.why("unknown.cord_heat", {name, text("kind", kind), celsius("conductor_high_c", cord.conductor->high),
                                        celsius("limit_c", cord.limit)});
      any = true;
    } else if (cord.surface && cord.surface->likely <= handled && cord.surface->high > handled) {
      finding.why("unknown.jacket_heat", {name, text("kind", kind), celsius("surface_high_c", cord.surface->high),
                                          celsius("limit_c", handled)});
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
  const auto handled = units::Temperature::fromCelsius(ruleOf("cord.jacket_over_60").limitValue());
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    FindingBuilder finding(rule);
    bool any = false;
    judgeBreaker(hookup, finding, any);
    judgeMachine(hookup, in.site(), finding, any);
    judgeFault(hookup, finding, any);
    judgeCords(hookup, finding, any);
    judgeBand(hookup, voltage, finding, any);
    judgeStall(hookup, finding, any);
    judgeHeat(hookup, handled, finding, any);
    if (any) found.push_back(finding.about(hookup, in).done());
  }
  return found;
}

}  // namespace cordreach::rules
