// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/cord_question.h"

#include "rules/ratings.h"
#include "rules/rule_table.h"
#include "study/assumptions.h"
#include "tables/code_limits.h"

namespace cordreach::planning {

bool sameButDistance(const CordQuestion& a, const CordQuestion& b) {
  return a.name == b.name && a.inlet == b.inlet && a.shaftPower == b.shaftPower && a.kind == b.kind &&
         a.doubleInsulated == b.doubleInsulated && a.wet == b.wet && a.breaker == b.breaker && a.run == b.run &&
         a.runSize == b.runSize && a.receptacle == b.receptacle && a.colour == b.colour &&
         a.groundFaultDevice == b.groundFaultDevice && a.at == b.at && a.cart == b.cart && a.jacket == b.jacket &&
         a.hours == b.hours && a.whatIf == b.whatIf;
}

std::vector<units::Current> likelyBreakers(const CordQuestion& question) {
  if (question.breaker) return {*question.breaker};
  const units::Current small = 15.0 * units::ampere;
  const units::Current large = 20.0 * units::ampere;
  const auto face = rules::receptacleRating(question.receptacle);
  const auto allowed = tables::receptacleRange(small);
  const bool ruledOut = face && allowed && *face > allowed->most.value;
  const double plateA = study::plateOf(question.inlet).in(units::ampere);
  if (ruledOut && plateA <= rules::ruleOf("breaker.unknown").limitValue()) return {large};
  return {small, large};
}

site::UseClass useOf(site::FaceColour colour) {
  const bool kept = colour == site::FaceColour::Red || colour == site::FaceColour::Orange;
  return kept ? site::UseClass::Never : site::UseClass::Ordinary;
}

}  // namespace cordreach::planning
