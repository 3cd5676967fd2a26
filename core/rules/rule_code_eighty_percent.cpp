// SPDX-License-Identifier: GPL-3.0-or-later
// More than the code plans: one cord-and-plug machine on a circuit with several receptacles, at any duration; or all
// that is on for three hours or more.
#include "rules/all_rules.h"
#include "rules/circuit_load.h"
#include "study/assumptions.h"

namespace cordreach::rules {

namespace {

void judgeMachines(const Case& in, const Rule& rule, Findings& found) {
  for (const HookupCase& hookup : in.hookups()) {
    const site::Circuit* circuit = hookup.circuit;
    if (circuit == nullptr || !circuit->rating || in.receptaclesOn(circuit->id) < 2) continue;
    const units::Current plate = study::plateOf(*hookup.inlet);
    const units::Current planned = circuit->rating->value * rule.limitFraction();
    if (!exceeds(plate.si(), planned.si())) continue;
    FindingBuilder finding(rule);
    finding.about(hookup, in).with(text("counts", "machine"));
    finding.with(amperes("plate_a", plate)).with(amperes("limit_a", planned));
    finding.why("share.machine", {text("machine", hookup.machine->name), amperes("plate_a", plate)});
    found.push_back(finding.done());
  }
}

void judgeLasting(const Case& in, const Rule& rule, Findings& found) {
  for (const study::CircuitAnswer& answer : in.answer().circuits) {
    const site::Circuit& circuit = in.site().at<site::Circuit>(answer.id);
    if (!circuit.rating || circuit.phases.size() > 1) continue;
    const units::Current planned = circuit.rating->value * rule.limitFraction();
    if (!exceeds(answer.continuousSum.si(), planned.si())) continue;
    FindingBuilder finding(rule);
    finding.about(circuit, in).at(answer.moment).with(text("counts", "lasting"));
    for (const HookupCase* hookup : sharing(answer, in)) finding.about(*hookup, in);
    finding.with(amperes("plate_a", answer.continuousSum)).with(amperes("limit_a", planned));
    std::vector<study::Share> lasting;
    for (const study::Share& share : answer.shares) {
      if (share.continuous) lasting.push_back(share);
    }
    whyShares(finding, lasting, in);
    found.push_back(finding.why("breaker.rated", {amperes("rating_a", circuit.rating->value)}).done());
  }
}

}  // namespace

Findings codeEightyPercent(const Case& in, const Rule& rule) {
  Findings found;
  judgeMachines(in, rule, found);
  judgeLasting(in, rule, found);
  return found;
}

}  // namespace cordreach::rules
