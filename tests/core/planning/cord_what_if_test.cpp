// SPDX-License-Identifier: GPL-3.0-or-later
// What is known, seen or feared about a job makes the answer about its cord stricter, never laxer.
#include <gtest/gtest.h>

#include "planning/cord_choice.h"
#include "planning/cord_instead.h"
#include "planning/cord_site.h"
#include "small_building.h"

namespace cordreach::planning {
namespace {

CordQuestion slowMachine(double distanceFeet) {
  CordQuestion asked;
  asked.name = "Floor machine";
  asked.inlet.name = "A";
  asked.inlet.loadClass = tables::LoadClass::Induction;
  asked.inlet.plate = site::known(12.0 * ampere);
  asked.inlet.cord = SmallBuilding::make(14, 50.0);
  asked.distance = distanceFeet * foot;
  asked.breaker = 20.0 * ampere;
  asked.run = site::known(60.0 * foot);
  asked.runSize = site::known(units::WireSize::awg(12));
  return asked;
}

const std::vector<bool CordWhatIf::*>& all() {
  static const std::vector<bool CordWhatIf::*> members{&CordWhatIf::hotDay,        &CordWhatIf::lowSupply,
                                                       &CordWhatIf::tiredBreaker,  &CordWhatIf::coiled,
                                                       &CordWhatIf::secondMachine, &CordWhatIf::chained};
  return members;
}

TEST(CordWhatIf, NeverMakesACordBetter) {
  const CordAdvice plain = chooseCord(slowMachine(80.0));
  ASSERT_FALSE(plain.candidates.empty());
  for (const auto member : all()) {
    CordQuestion asked = slowMachine(80.0);
    asked.whatIf.*member = true;
    const CordAdvice worse = chooseCord(asked);
    ASSERT_EQ(worse.candidates.size(), plain.candidates.size());
    for (std::size_t i = 0; i < plain.candidates.size(); ++i) {
      EXPECT_GE(worse.candidates[i].verdict, plain.candidates[i].verdict) << i;
    }
  }
}

TEST(CordWhatIf, EachBuildsASoundSiteAndChangesTheAnswer) {
  const site::Cord cord{.id = site::CordId("C"), .make = SmallBuilding::make(12, 50.0), .sockets = {"5-15"}};
  const JudgedCase plain = judgeCases(slowMachine(80.0), &cord).front();
  for (const auto member : all()) {
    CordQuestion asked = slowMachine(80.0);
    asked.whatIf.*member = true;
    EXPECT_TRUE(site::checkInvariants(cordSite(asked, 20.0 * ampere, &cord)).ok());
    if (member == &CordWhatIf::tiredBreaker) continue;  // 12 A trips no breaker of 20 A, however tired
    const JudgedCase worse = judgeCases(asked, &cord).front();
    const bool same = worse.answer.voltage == plain.answer.voltage && worse.verdict == plain.verdict &&
                      worse.answer.cords.front().conductor == plain.answer.cords.front().conductor;
    EXPECT_FALSE(same);
  }
}

TEST(CordWhatIf, TwoJoinedAreAlwaysAWarningAndNeverChosen) {
  CordQuestion asked = slowMachine(80.0);
  asked.whatIf.chained = true;
  const CordAdvice advice = chooseCord(asked);
  EXPECT_FALSE(advice.choice.has_value());
  EXPECT_GE(advice.verdict, rules::Severity::Warning);
  ASSERT_FALSE(advice.candidates.empty());
  for (const CordCandidate& candidate : advice.candidates) EXPECT_GE(candidate.verdict, rules::Severity::Warning);
}

TEST(CordWhatIf, ATiredBreakerIsCountedOnToActEarly) {
  CordQuestion asked = slowMachine(80.0);
  asked.inlet.plate = site::known(15.5 * ampere);
  asked.inlet.loadClass = tables::LoadClass::Resistance;
  asked.breaker = 15.0 * ampere;
  const site::Cord cord{.id = site::CordId("C"), .make = SmallBuilding::make(10, 50.0), .sockets = {"5-15"}};
  asked.whatIf.tiredBreaker = true;
  EXPECT_GE(judgeCases(asked, &cord).front().verdict, rules::Severity::Caution);
}

TEST(CordLimits, EachIsToldOnceAndGrowsWithTheCord) {
  const CordAdvice advice = chooseCord(slowMachine(110.0));
  const auto usedOf = [](const CordCandidate& candidate, CordLimit wanted) {
    for (const LimitUse& one : candidate.limits) {
      if (one.limit == wanted) return one.used.value_or(99.0);
    }
    return -1.0;
  };
  const CordCandidate* before = nullptr;
  for (const CordCandidate& candidate : advice.candidates) {
    for (const CordLimit limit : {CordLimit::Amps, CordLimit::Volts, CordLimit::Heat, CordLimit::Start}) {
      EXPECT_GT(usedOf(candidate, limit), 0.0) << nameOf(limit);
    }
    if (before != nullptr && before->size == candidate.size) {
      EXPECT_GT(usedOf(candidate, CordLimit::Volts), usedOf(*before, CordLimit::Volts));
      EXPECT_GE(usedOf(candidate, CordLimit::Start), usedOf(*before, CordLimit::Start));
    }
    before = &candidate;
  }
}

TEST(CordLimits, TheVoltsLimitIsUsedUpWhereTheRuleSpeaks) {
  CordQuestion asked = slowMachine(100.0);
  asked.run = site::known(150.0 * foot);
  for (const CordCandidate& candidate : chooseCord(asked).candidates) {
    const bool over = std::any_of(candidate.limits.begin(), candidate.limits.end(), [](const LimitUse& one) {
      return one.limit == CordLimit::Volts && one.used && *one.used > 1.0;
    });
    if (candidate.limit == "machine.voltage") {
      EXPECT_TRUE(over);
    }
    if (candidate.verdict < rules::Severity::Caution) {
      EXPECT_FALSE(over);
    }
  }
}

TEST(CordQuestion, ATwentyAmpereFaceRulesOutTheSmallerBreakerForSmallMachinesOnly) {
  CordQuestion asked = slowMachine(80.0);
  asked.breaker.reset();
  EXPECT_EQ(likelyBreakers(asked).size(), 2U);
  asked.receptacle = "5-20";
  EXPECT_EQ(likelyBreakers(asked), std::vector<units::Current>{20.0 * ampere});
  asked.inlet.plate = site::known(14.0 * ampere);
  EXPECT_EQ(likelyBreakers(asked).size(), 2U);
  asked.receptacle = "5-15";
  asked.inlet.plate = site::known(8.0 * ampere);
  EXPECT_EQ(likelyBreakers(asked).size(), 2U);
}

TEST(CordQuestion, SaysThatTheBreakerIsWorthFindingOut) {
  CordQuestion asked = slowMachine(80.0);
  asked.inlet.plate = site::known(14.0 * ampere);
  asked.inlet.loadClass = tables::LoadClass::RectifiedDc;
  asked.breaker.reset();
  const CordAdvice unknown = chooseCord(asked);
  EXPECT_EQ(unknown.findOut, "find.breaker");
  asked.breaker = 20.0 * ampere;
  EXPECT_TRUE(chooseCord(asked).findOut.empty());
  EXPECT_TRUE(chooseCord(asked).choice.has_value());
}

TEST(CordQuestion, NeverOffersARedOrOrangeFace) {
  for (const site::FaceColour colour : {site::FaceColour::Red, site::FaceColour::Orange}) {
    CordQuestion asked = slowMachine(80.0);
    asked.colour = colour;
    const CordAdvice advice = chooseCord(asked);
    EXPECT_FALSE(advice.choice.has_value());
    for (const CordCandidate& candidate : advice.candidates) EXPECT_GE(candidate.verdict, rules::Severity::Warning);
  }
}

TEST(CordQuestion, WetWorkNeedsAGroundFaultDevice) {
  CordQuestion asked = slowMachine(80.0);
  asked.wet = true;
  EXPECT_FALSE(chooseCord(asked).choice.has_value());
  asked.groundFaultDevice = true;
  EXPECT_TRUE(chooseCord(asked).choice.has_value());
}

TEST(CordQuestion, TakesTheOneCordInHand) {
  CordQuestion asked = slowMachine(80.0);
  asked.jacket = SmallBuilding::make(12, 50.0);
  const CordAdvice advice = chooseCord(asked);
  ASSERT_EQ(advice.candidates.size(), 1U);
  EXPECT_EQ(advice.choice, 0U);
  asked.jacket = SmallBuilding::make(16, 50.0);
  EXPECT_FALSE(chooseCord(asked).choice.has_value());
  asked.jacket = SmallBuilding::make(12, 25.0);
  EXPECT_EQ(chooseCord(asked).reason, "cord.none_long_enough");
}

TEST(CordQuestion, JudgedOnceAQuestionMayMoveItsDistance) {
  const CordQuestion near = slowMachine(60.0);
  const CordQuestion far = slowMachine(110.0);
  EXPECT_TRUE(sameButDistance(near, far));
  const auto judged = judgeCords(near, cordsOf(near));
  const CordAdvice moved = adviseFrom(far, judged);
  const CordAdvice fresh = chooseCord(far);
  EXPECT_EQ(moved.choice, fresh.choice);
  EXPECT_EQ(moved.candidates.size(), fresh.candidates.size());
  CordQuestion other = near;
  other.whatIf.coiled = true;
  EXPECT_FALSE(sameButDistance(near, other));
}

}  // namespace
}  // namespace cordreach::planning
