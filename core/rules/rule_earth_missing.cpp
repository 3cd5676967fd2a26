// SPDX-License-Identifier: GPL-3.0-or-later
// An earthed machine whose earth is broken somewhere between the outlet and its frame: after a failure the frame stays
// live and no breaker acts.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "rules/protection.h"

namespace cordreach::rules {

namespace {

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
    bool earthed = false;
    bool unprotected = false;
    for (const HookupCase* user : cord.users) {
      if (user->machine->doubleInsulated) continue;
      earthed = true;
      unprotected = unprotected || protectionOf(*user, in.site()) == Protection::None;
      finding.about(*user, in);
    }
    if (!earthed) continue;
    if (unprotected) finding.why("earth.no_ground_fault_device");
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
