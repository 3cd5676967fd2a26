// SPDX-License-Identifier: GPL-3.0-or-later
// More on a circuit than its breaker is rated for, whether or not it trips.
#include "rules/all_rules.h"
#include "rules/circuit_load.h"

namespace cordreach::rules {

Findings circuitOverRating(const Case& in, const Rule& rule) {
  Findings found;
  for (const study::CircuitAnswer& answer : in.answer().circuits) {
    const site::Circuit& circuit = in.site().at<site::Circuit>(answer.id);
    if (!circuit.rating) continue;
    const units::Current load = countedLoad(answer, circuit);
    if (!exceeds(load.si(), circuit.rating->value.si() * rule.limitFraction())) continue;
    FindingBuilder finding(rule);
    finding.about(circuit, in).at(answer.moment);
    for (const HookupCase* hookup : sharing(answer, in)) finding.about(*hookup, in);
    finding.with(amperes("load_a", load)).with(amperes("current_a", answer.current.likely));
    finding.with(amperes("plate_a", answer.plateSum));
    finding.with(number("load_percent", 100.0 * (load / circuit.rating->value)));
    if (answer.together < 1.0) {
      finding.with(amperes("usual_a", answer.likelyCurrent)).with(number("together_percent", 100.0 * answer.together));
    }
    whyShares(finding, answer.shares, in);
    found.push_back(finding.why("breaker.rated", {amperes("rating_a", circuit.rating->value)}).done());
  }
  return found;
}

}  // namespace cordreach::rules
