// SPDX-License-Identifier: GPL-3.0-or-later
// One 15 A receptacle alone on a 20 A circuit: the breaker lets it be overloaded. A duplex counts as two.
#include <map>

#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "rules/ratings.h"

namespace cordreach::rules {

namespace {

// Of all circuits at once: a building has thousands of receptacles.
std::map<site::CircuitId, std::size_t> receptaclesByCircuit(const site::Site& site) {
  std::map<site::CircuitId, std::size_t> counts;
  for (const site::Outlet& outlet : site.all<site::Outlet>()) {
    for (const site::Contact& contact : outlet.contacts) {
      if (contact.assignment) ++counts[contact.assignment->circuit];
    }
  }
  return counts;
}

}  // namespace

Findings receptacleSingleFifteenOnTwenty(const Case& in, const Rule& rule) {
  Findings found;
  const auto counts = receptaclesByCircuit(in.site());
  for (const site::Outlet* outlet : in.answeredOutlets()) {
    for (const site::Contact& contact : outlet->contacts) {
      if (!contact.assignment) continue;
      const site::Circuit& circuit = in.site().at<site::Circuit>(contact.assignment->circuit);
      const auto rated = receptacleRating(contact.receptacle);
      if (!rated || !circuit.rating || !(*rated < circuit.rating->value) || counts.at(circuit.id) != 1) continue;
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
