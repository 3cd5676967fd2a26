// SPDX-License-Identifier: GPL-3.0-or-later
// A neutral shared by several poles that carries more than any of them may: third harmonics add in it.
#include <algorithm>

#include "rules/all_rules.h"
#include "rules/circuit_load.h"

namespace cordreach::rules {

namespace {

// Once a group: by its first circuit.
bool speaksForGroup(const site::Circuit& circuit) {
  return std::all_of(circuit.sharesNeutralWith.begin(), circuit.sharesNeutralWith.end(),
                     [&](const site::CircuitId& other) { return circuit.id < other; });
}

}  // namespace

Findings neutralOverRating(const Case& in, const Rule& rule) {
  Findings found;
  for (const study::CircuitAnswer& answer : in.answer().circuits) {
    const site::Circuit& circuit = in.site().at<site::Circuit>(answer.id);
    const bool shared = !circuit.sharesNeutralWith.empty() || circuit.phases.size() > 1;
    if (!shared || !circuit.rating || !speaksForGroup(circuit)) continue;
    if (!exceeds(answer.neutral.si(), circuit.rating->value.si() * rule.limitFraction())) continue;
    FindingBuilder finding(rule);
    finding.about(circuit, in).at(answer.moment).colours(in.on(circuit.id));
    std::vector<study::Share> shares = answer.shares;
    for (const site::CircuitId& other : circuit.sharesNeutralWith) {
      finding.colours(in.on(other));
      const study::CircuitAnswer* more = in.answer().find(other);
      if (more != nullptr) shares.insert(shares.end(), more->shares.begin(), more->shares.end());
    }
    finding.with(amperes("neutral_a", answer.neutral)).with(amperes("current_a", answer.current.likely));
    whyShares(finding, shares, in);
    found.push_back(finding.why("neutral.shared").done());
  }
  return found;
}

}  // namespace cordreach::rules
