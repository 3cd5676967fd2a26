// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/fault_check.h"

#include <gtest/gtest.h>

#include "small_building.h"

namespace cordreach::planning {
namespace {

using rules::Severity;

FaultQuestion question(int gauge, double lengthFeet) {
  FaultQuestion asked;
  asked.cord = SmallBuilding::make(gauge, lengthFeet);
  asked.breaker = {20.0 * ampere};
  asked.run = site::known(66.0 * foot);
  asked.runSize = site::known(units::WireSize::awg(12));
  return asked;
}

TEST(FaultCheck, EighteenGaugeBurnsAndTwelveDoesNot) {
  EXPECT_EQ(checkFault(question(18, 50.0)).verdict, Severity::Warning);
  EXPECT_EQ(checkFault(question(18, 50.0)).reason, "fault.burns");
  EXPECT_LT(checkFault(question(12, 100.0)).verdict, Severity::Caution);
}

TEST(FaultCheck, ABrokenEarthIsDangerUnlessADeviceIsThere) {
  FaultQuestion asked = question(12, 25.0);
  const FaultCheck whole = checkFault(asked);
  asked.earthBroken = true;
  const FaultCheck broken = checkFault(asked);
  EXPECT_EQ(broken.verdict, Severity::Danger);
  EXPECT_FALSE(broken.frameLive.has_value());
  EXPECT_NEAR(broken.frame.likely.si(), 120.0, 1.0);
  EXPECT_NEAR(whole.frame.likely.si(), 60.0, 1.0);
  asked.groundFaultDevice = true;
  const FaultCheck guarded = checkFault(asked);
  EXPECT_LT(guarded.verdict, Severity::Caution);
  EXPECT_NEAR(guarded.frameLive->si(), 5.594, 0.01);
}

TEST(FaultCheck, ADeviceCutsAFaultToEarthWithinItsShortestTime) {
  FaultQuestion asked = question(16, 100.0);
  asked.groundFaultDevice = true;
  EXPECT_NEAR(checkFault(asked).frameLive->si(), 0.025, 0.001);
}

TEST(FaultCheck, WhatFlowedBeforeWarmsTheCordAndTheBreaker) {
  FaultQuestion asked = question(16, 100.0);
  const FaultCheck cool = checkFault(asked);
  asked.carrying = 13.0 * ampere;
  const FaultCheck warm = checkFault(asked);
  EXPECT_LT(warm.fault.current->likely, cool.fault.current->likely);
}

TEST(FaultCheck, IecBreakersStandOnTwoHundredThirtyVolts) {
  FaultQuestion asked = question(14, 50.0);
  asked.breaker = {16.0 * ampere, physics::BreakerKind::IecB};
  const FaultCheck check = checkFault(asked);
  EXPECT_NEAR(check.fault.toEarth.likely.si(), 230.0, 1.0);
  EXPECT_LT(check.verdict, Severity::Caution);
  EXPECT_LE(check.fault.cleared.latest->si(), 0.1);
}

TEST(FaultCheck, AnArcIsClearedLaterThanAFault) {
  const FaultCheck check = checkFault(question(12, 50.0));
  ASSERT_TRUE(check.arc.has_value());
  EXPECT_LT(check.arc->low, check.arc->high);
  EXPECT_LT(check.arc->high, check.fault.current->likely);
  EXPECT_GE(*check.arcCleared.likely, *check.fault.cleared.likely);
}

TEST(FaultCheck, NothingIsClaimedOfAGenerator) {
  FaultQuestion asked = question(12, 50.0);
  asked.source = site::SupplyKindOfSource::Generator;
  const FaultCheck check = checkFault(asked);
  EXPECT_EQ(check.verdict, Severity::Notice);
  EXPECT_EQ(check.reason, "fault.not_claimed");
  EXPECT_FALSE(check.arc.has_value());
  EXPECT_FALSE(check.frameLive.has_value());
}

}  // namespace
}  // namespace cordreach::planning
