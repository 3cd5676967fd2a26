// SPDX-License-Identifier: GPL-3.0-or-later
// A pad that turns faster than it is made for can tear and fly off.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "study/pad_in_use.h"

namespace cordreach::rules {

namespace {

// Plates and pads state turns a minute.
constexpr double kTurnsAMinute = 60.0;

std::optional<double> turnsOf(const HookupCase& hookup) {
  if (hookup.machine->speed) return hookup.machine->speed->value.in(units::hertz)*kTurnsAMinute;
  if (hookup.answer->speedRpm) return hookup.answer->speedRpm->likely;
  return {};
}

}  // namespace

Findings padOverspeed(const Case& in, const Rule& rule) {
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    const site::Pad* pad = study::padInUse(in.site(), *hookup.hookup);
    const auto turns = turnsOf(hookup);
    const auto rated = pad != nullptr ? study::ratedRpmOf(*pad) : std::nullopt;
    if (!rated || !turns || !exceeds(*turns, *rated)) continue;
    FindingBuilder finding(rule);
    finding.subject(SubjectKind::Pad, pad->id.text()).about(hookup, in);
    finding.with(text("pad", pad->name)).with(number("pad_rpm", *rated)).with(number("machine_rpm", *turns));
    found.push_back(finding.why("pad.too_slow", {number("pad_rpm", *rated), number("machine_rpm", *turns)}).done());
  }
  return found;
}

}  // namespace cordreach::rules
