// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/start_finding.h"

namespace cordreach::rules {

void aboutStart(FindingBuilder& finding, const HookupCase& hookup, const Case& in) {
  const study::StartAnswer& start = *hookup.answer->start;
  finding.about(hookup, in);
  finding.with(amperes("current_a", start.peak.likely)).with(volts("voltage_v", start.lowest.likely));
  base::Arguments draws{text("machine", hookup.machine->name), amperes("current_a", start.peak.likely)};
  if (start.time.likely) {
    finding.with(seconds("start_s", *start.time.likely));
    draws.push_back(amperes("running_a", hookup.answer->current.likely));
  }
  finding.with(text("way", start.tipped ? "tipped" : hookup.machine->kind == "slow-machine" ? "flat" : "plain"));
  finding.why("start.draws", std::move(draws));
}

}  // namespace cordreach::rules
