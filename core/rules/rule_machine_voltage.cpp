// SPDX-License-Identifier: GPL-3.0-or-later
// Volts at the machine's terminals outside what its plate allows.
#include "rules/all_rules.h"
#include "rules/drop_parts.h"
#include "rules/voltage_limits.h"

namespace cordreach::rules {

Findings machineVoltage(const Case& in, const Rule& rule) {
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    const study::HookupAnswer& answer = *hookup.answer;
    if (hookup.contact == nullptr || hookup.contact->dead || answer.current.likely.si() <= 0.0) continue;
    const VoltageLimits limits = voltageLimitsOf(*hookup.inlet, answer.nominal, rule.limitFraction());
    const bool low = answer.voltage.likely < limits.low;
    // Too few to run on at all is told as that.
    if (low && (answer.stalledCold || answer.stalledWarm)) continue;
    if (!low && answer.voltage.likely <= limits.high) continue;
    FindingBuilder finding(rule);
    finding.about(hookup, in).with(text("side", low ? "low" : "high"));
    finding.with(volts("voltage_v", answer.voltage.likely)).with(volts("plate_v", limits.plate));
    finding.with(volts("limit_v", low ? limits.low : limits.high)).with(volts("drop_v", answer.drop.likely));
    if (low) {
      whyDrop(finding, hookup);
    } else {
      finding.why("source.high", {volts("open_circuit_v", answer.voltage.likely + answer.drop.likely)});
    }
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
