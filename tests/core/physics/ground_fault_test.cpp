// SPDX-License-Identifier: GPL-3.0-or-later
// The class A device and what adds up to its threshold.
#include "physics/ground_fault.h"

#include <gtest/gtest.h>

namespace cordreach::physics {
namespace {

using units::milliampere;

TEST(GroundFault, HoldsMayTripAndTripsAtItsTwoThresholds) {
  EXPECT_EQ(groundFaultAnswer(3.99 * milliampere), GroundFaultAnswer::Holds);
  EXPECT_EQ(groundFaultAnswer(4.0 * milliampere), GroundFaultAnswer::MayTrip);
  EXPECT_EQ(groundFaultAnswer(5.99 * milliampere), GroundFaultAnswer::MayTrip);
  EXPECT_EQ(groundFaultAnswer(6.0 * milliampere), GroundFaultAnswer::Trips);
}

TEST(GroundFault, NeedNotTripBelowItsThresholdAndIsFlatAboveItsCurve) {
  EXPECT_FALSE(groundFaultTripTime(5.0 * milliampere).has_value());
  EXPECT_EQ(groundFaultTripTime(264.0 * milliampere), groundFaultTripTime(2000.0 * milliampere));
}

TEST(Leakage, OfEightPortablesReachesTheFirstThreshold) {
  EXPECT_EQ(groundFaultAnswer(7.0 * portableLeakage()), GroundFaultAnswer::Holds);
  EXPECT_EQ(groundFaultAnswer(8.0 * portableLeakage()), GroundFaultAnswer::MayTrip);
  EXPECT_LT(portableLeakage(), stationaryLeakage());
}

}  // namespace
}  // namespace cordreach::physics
