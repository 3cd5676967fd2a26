// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/cord_choice.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "planning/cord_site.h"
#include "rules/judge.h"
#include "small_building.h"

namespace cordreach::planning {
namespace {

CordQuestion question(double distanceFeet) {
  CordQuestion asked;
  asked.name = "Floor machine";
  asked.inlet.name = "A";
  asked.inlet.loadClass = tables::LoadClass::Induction;
  asked.inlet.plate = site::known(15.0 * ampere);
  asked.inlet.cord = SmallBuilding::make(14, 50.0);
  asked.distance = distanceFeet * foot;
  asked.breaker = 20.0 * ampere;
  asked.run = site::known(60.0 * foot);
  asked.runSize = site::known(units::WireSize::awg(12));
  return asked;
}

TEST(CordChoice, NeedsNoExtensionWhereTheOwnCordReaches) {
  const CordAdvice near = chooseCord(question(42.0));  // 42 ft and 2.4 m of slack: 49.9 ft
  EXPECT_FALSE(near.extensionNeeded);
  EXPECT_FALSE(near.choice.has_value());
  EXPECT_EQ(near.reason, "cord.not_needed");
  EXPECT_LT(near.verdict, rules::Severity::Caution);
  EXPECT_TRUE(chooseCord(question(42.2)).extensionNeeded);
}

TEST(CordChoice, NamesTheFindingThatStandsBehindItsVerdict) {
  const auto named = [](const CordAdvice& advice, const std::string& name) {
    return std::any_of(advice.arguments.begin(), advice.arguments.end(),
                       [&](const base::Argument& argument) { return argument.name == name; });
  };
  CordQuestion asked = question(40.0);
  asked.run = site::known(100.0 * foot);
  const CordAdvice far = chooseCord(asked);
  EXPECT_EQ(far.verdict, rules::Severity::Notice);
  EXPECT_TRUE(named(far, "notice"));
  asked.breaker = 15.0 * ampere;
  const CordAdvice overloaded = chooseCord(asked);
  EXPECT_GE(overloaded.verdict, rules::Severity::Caution);
  EXPECT_TRUE(named(overloaded, "limit"));
  EXPECT_FALSE(named(chooseCord(question(20.0)), "limit"));
}

TEST(CordChoice, TakesTheLightestThatIsOneSizeHeavierThenTheShortest) {
  const CordAdvice advice = chooseCord(question(60.0));
  ASSERT_TRUE(advice.choice.has_value());
  const CordCandidate& chosen = advice.candidates[*advice.choice];
  EXPECT_EQ(chosen.size, units::WireSize::awg(12));
  EXPECT_NEAR(chosen.length.in(foot), 25.0, 1e-9);
  EXPECT_EQ(advice.candidates.size(), 16u);
  for (const CordCandidate& candidate : advice.candidates) {
    EXPECT_FALSE(candidate.why.empty());
    EXPECT_EQ(candidate.limit.empty(), candidate.verdict == rules::Severity::Ok);
  }
}

TEST(CordChoice, NeverLetsALighterCordPass) {
  const CordAdvice advice = chooseCord(question(60.0));
  for (const CordCandidate& candidate : advice.candidates) {
    if (candidate.size != units::WireSize::awg(16)) continue;
    EXPECT_GE(candidate.verdict, rules::Severity::Caution);
  }
}

TEST(CordChoice, TakesTheStricterOfTwoBreakersWhenItIsUnknown) {
  CordQuestion asked = question(60.0);
  asked.breaker.reset();
  const CordAdvice unknown = chooseCord(asked);
  asked.breaker = 15.0 * ampere;
  const CordAdvice fifteen = chooseCord(asked);
  ASSERT_EQ(unknown.candidates.size(), fifteen.candidates.size());
  for (std::size_t i = 0; i < unknown.candidates.size(); ++i) {
    EXPECT_GE(unknown.candidates[i].verdict, fifteen.candidates[i].verdict);
  }
  EXPECT_FALSE(unknown.choice.has_value());  // 15 A is more than 80 % of a shared 15 A circuit
  EXPECT_EQ(unknown.reason, "cord.none_works");
}

TEST(CordChoice, SaysWhenNothingOnTheCartIsLongEnough) {
  SmallBuilding building;
  building.cord("C03", 12, 25.0);
  CordQuestion asked = question(90.0);
  asked.cart = &building.site;
  EXPECT_EQ(chooseCord(asked).reason, "cord.none_long_enough");
  building.cord("C01", 12, 50.0);
  const CordAdvice advice = chooseCord(asked);
  ASSERT_TRUE(advice.choice.has_value());
  EXPECT_EQ(advice.candidates[*advice.choice].cord, site::CordId("C01"));
}

TEST(CordChoice, LeavesOutOfServiceCordsOnTheCart) {
  SmallBuilding building;
  building.cord("C01", 12, 50.0);
  auto cord = building.site.at<site::Cord>(site::CordId("C01"));
  cord.outOfService = site::OutOfService{"taped", "", ""};
  building.put(cord);
  CordQuestion asked = question(60.0);
  asked.cart = &building.site;
  EXPECT_TRUE(chooseCord(asked).candidates.empty());
}

TEST(CordSite, IsASoundSite) {
  const site::Cord cord{.id = site::CordId("C"), .make = SmallBuilding::make(12, 25.0), .sockets = {"5-15"}};
  EXPECT_TRUE(site::checkInvariants(cordSite(question(60.0), 20.0 * ampere, &cord)).ok());
  EXPECT_TRUE(site::checkInvariants(cordSite(question(60.0), 20.0 * ampere, nullptr)).ok());
}

}  // namespace
}  // namespace cordreach::planning
