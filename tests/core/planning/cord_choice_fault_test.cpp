// SPDX-License-Identifier: GPL-3.0-or-later
// Fault clearing as one of the limits that refuse a cord: by the likely curve, while the latest only makes it close.
#include <gtest/gtest.h>

#include <algorithm>

#include "planning/cord_choice.h"
#include "small_building.h"

namespace cordreach::planning {
namespace {

site::Site cart() {
  site::Site site{.id = site::SiteId("cart")};
  for (const int gauge : {18, 14, 12}) {
    site::Cord cord{.id = site::CordId("C" + std::to_string(gauge)), .make = SmallBuilding::make(gauge, 50.0)};
    cord.label = cord.id.text();
    cord.sockets = {"5-15"};
    site.all<site::Cord>().put(cord);
  }
  return site;
}

CordAdvice adviceFor(const site::Site& cart, double breakerA) {
  CordQuestion asked;
  asked.name = "Upright vacuum";
  asked.inlet.name = "A";
  asked.inlet.loadClass = tables::LoadClass::Resistance;
  asked.inlet.plate = site::known(5.0 * ampere);
  asked.inlet.cord = SmallBuilding::make(18, 40.0);
  asked.distance = 80.0 * foot;
  asked.breaker = breakerA * ampere;
  asked.run = site::known(60.0 * foot);
  asked.runSize = site::known(units::WireSize::awg(12));
  asked.cart = &cart;
  return chooseCord(asked);
}

TEST(CordChoice, RefusesACordThatAFaultBurnsBeforeTheLikelyCurveActs) {
  const site::Site site = cart();
  const CordAdvice advice = adviceFor(site, 20.0);
  ASSERT_EQ(advice.candidates.size(), 3u);
  const CordCandidate& thin = advice.candidates.front();
  EXPECT_EQ(thin.label, "C18");
  EXPECT_EQ(thin.limit, "fault.not_cleared");
  EXPECT_EQ(thin.verdict, rules::Severity::Warning);
  EXPECT_FALSE(thin.why.empty());
  ASSERT_TRUE(advice.choice.has_value());
  EXPECT_EQ(advice.candidates[*advice.choice].label, "C14");
}

// The same cord behind a smaller breaker is saved in time by the likely curve, and close.
TEST(CordChoice, TakesTheBreakerIntoAccount) {
  const site::Site site = cart();
  const CordAdvice small = adviceFor(site, 15.0);
  EXPECT_EQ(small.candidates.front().limit, "fault.cleared_late");
  EXPECT_EQ(small.candidates.front().verdict, rules::Severity::Notice);
}

TEST(CordChoice, SaysHowMuchOfTheTimeToTheDamageTheBreakerTakes) {
  const site::Site site = cart();
  const auto used = [](const CordCandidate& candidate) {
    const auto at = std::find_if(candidate.limits.begin(), candidate.limits.end(),
                                 [](const LimitUse& use) { return use.limit == CordLimit::Clearing; });
    return at == candidate.limits.end() ? std::nullopt : at->used;
  };
  const CordAdvice advice = adviceFor(site, 20.0);
  ASSERT_TRUE(used(advice.candidates[0]) && used(advice.candidates[1]) && used(advice.candidates[2]));
  EXPECT_GT(*used(advice.candidates[0]), 1.0);
  EXPECT_LT(*used(advice.candidates[1]), 1.0);
  EXPECT_LE(*used(advice.candidates[2]), *used(advice.candidates[1]));
  EXPECT_EQ(limitOfFinding(advice.candidates[0].limit), CordLimit::Clearing);
}

}  // namespace
}  // namespace cordreach::planning
