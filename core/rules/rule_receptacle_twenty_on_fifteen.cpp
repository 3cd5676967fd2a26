// SPDX-License-Identifier: GPL-3.0-or-later
// A receptacle that invites more than its circuit's breaker allows.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "rules/ratings.h"
#include "tables/code_limits.h"

namespace cordreach::rules {

namespace {

const site::Contact* offending(const site::Outlet& outlet, const Case& in) {
  for (const site::Contact& contact : outlet.contacts) {
    if (!contact.assignment) continue;
    const site::Circuit& circuit = in.site().at<site::Circuit>(contact.assignment->circuit);
    const auto rated = receptacleRating(contact.receptacle);
    const auto allowed = circuit.rating ? tables::receptacleRange(circuit.rating->value) : std::nullopt;
    if (rated && allowed && *rated > allowed->most.value) return &contact;
  }
  return nullptr;
}

}  // namespace

Findings receptacleTwentyOnFifteen(const Case& in, const Rule& rule) {
  Findings found;
  for (const site::Outlet* outlet : in.answeredOutlets()) {
    const site::Contact* contact = offending(*outlet, in);
    if (contact == nullptr) continue;
    const site::Circuit& circuit = in.site().at<site::Circuit>(contact->assignment->circuit);
    FindingBuilder finding(rule);
    finding.about(*outlet).about(circuit, in).with(text("receptacle", contact->receptacle));
    for (const HookupCase& hookup : in.hookups()) {
      if (hookup.outlet == outlet) finding.colours(hookup);
    }
    finding.why("receptacle.rated", {amperes("receptacle_rating_a", *receptacleRating(contact->receptacle))});
    found.push_back(finding.why("breaker.rated", {amperes("rating_a", circuit.rating->value)}).done());
  }
  return found;
}

}  // namespace cordreach::rules
