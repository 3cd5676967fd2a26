// SPDX-License-Identifier: GPL-3.0-or-later
// One 15 A receptacle alone on a 20 A circuit: the breaker lets it be overloaded. A duplex counts as two.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "rules/ratings.h"

namespace cordreach::rules {

Findings receptacleSingleFifteenOnTwenty(const Case& in, const Rule& rule) {
  Findings found;
  for (const site::Outlet* outlet : in.answeredOutlets()) {
    for (const site::Contact& contact : outlet->contacts) {
      if (!contact.assignment) continue;
      const site::Circuit& circuit = in.site().at<site::Circuit>(contact.assignment->circuit);
      const auto rated = receptacleRating(contact.receptacle);
      if (!rated || !circuit.rating || !(*rated < circuit.rating->value) || in.receptaclesOn(circuit.id) != 1) continue;
      FindingBuilder finding(rule);
      finding.about(*outlet).about(circuit, in).with(text("receptacle", contact.receptacle));
      for (const HookupCase& hookup : in.hookups()) {
        if (hookup.contact == &contact) finding.colours(hookup);
      }
      finding.why("receptacle.rated", {amperes("receptacle_rating_a", *rated)});
      found.push_back(finding.why("receptacle.alone", {amperes("rating_a", circuit.rating->value)}).done());
    }
  }
  return found;
}

}  // namespace cordreach::rules
