// SPDX-License-Identifier: GPL-3.0-or-later
// An earthed machine whose earth is broken somewhere between the outlet and its frame: after a failure the frame stays
// live and no breaker acts.
#include "physics/touch_voltage.h"
#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "rules/protection.h"

namespace cordreach::rules {

namespace {

// What the frame would stand at, beside what it would be with an earth that is whole.
void aboutFrame(FindingBuilder& finding, const HookupCase& hookup) {
  if (hookup.answer->cords.empty() || !hookup.answer->cords.back().fault) return;
  const study::FaultAnswer& fault = *hookup.answer->cords.back().fault;
  base::Arguments frame{volts("touch_v", fault.toEarth.likely)};
  if (fault.claimed) frame.push_back(volts("earthed_touch_v", fault.touch.likely));
  for (const base::Argument& argument : frame) finding.with(argument);
  finding.why("earth.frame_live", std::move(frame));
}

bool carriesNoEarth(const site::CordMake& make) {
  return make.pin != site::Pin::Present || (make.conductors && make.conductors->value < 3);
}

}  // namespace

Findings earthMissing(const Case& in, const Rule& rule) {
  Findings found;
  for (const CordCase& cord : in.cords()) {
    if (!carriesNoEarth(cord.link.make())) continue;
    FindingBuilder finding(rule);
    const bool pinGone = cord.link.make().pin == site::Pin::Missing;
    finding.about(cord.link).with(text("earth", pinGone ? "pin" : "wires"));
    finding.why(pinGone ? "earth.pin_missing" : "earth.two_wire_cord");
    const HookupCase* worst = nullptr;
    bool unprotected = false;
    bool guarded = false;
    for (const HookupCase* user : cord.users) {
      if (user->machine->doubleInsulated) continue;
      const Protection protection = protectionOf(*user, in.site());
      unprotected = unprotected || protection == Protection::None;
      guarded = guarded || (protection != Protection::None && protection != Protection::Unknown);
      if (worst == nullptr) worst = user;
      finding.about(*user, in);
    }
    if (worst == nullptr) continue;
    if (unprotected) finding.why("earth.no_ground_fault_device");
    aboutFrame(finding, *worst);
    if (guarded) finding.why("earth.device_acts", {seconds("shock_s", physics::longestShockBehindDevice())});
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
