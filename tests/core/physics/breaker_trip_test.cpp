// SPDX-License-Identifier: GPL-3.0-or-later
// Trip times and the state carried through a duty.
#include "physics/breaker_trip.h"

#include <cmath>

#include <gtest/gtest.h>

namespace cordreach::physics {
namespace {

using units::ampere;
using units::second;

const Breaker kTwenty{20.0 * ampere};
const units::Temperature kRoom = units::Temperature::fromCelsius(25);

TEST(Trip, NeverBelowTheUltimateCurve) {
  const TripTimes times = trip(kTwenty, 20.0 * ampere, 0.0 * ampere, BreakerAir::all(kRoom));
  EXPECT_EQ(times, TripTimes{});
}

TEST(Trip, AnswersNothingLeftWhenWhatItCarriedTripsItByItself) {
  const TripTimes times = trip(kTwenty, 10.0 * ampere, 24.0 * ampere, BreakerAir::all(kRoom));
  EXPECT_EQ(times.earliest, 0.0 * second);
  EXPECT_EQ(times.likely, 0.0 * second);
  EXPECT_FALSE(times.latest.has_value());
}

TEST(Trip, IsInstantAbovePickUpAndThermalBelow) {
  const TripTimes times = trip(kTwenty, 180.0 * ampere, 0.0 * ampere, BreakerAir::all(kRoom));
  EXPECT_EQ(times.earliest, 0.008 * second);
  EXPECT_EQ(times.likely, 0.017 * second);
  EXPECT_GT(*times.latest, 1.0 * second);
}

TEST(Trip, OfAPanelUsesWarmerAirForTheEarliestCurveOnly) {
  const BreakerAir air = BreakerAir::panelIn(kRoom);
  EXPECT_NEAR((air.earliest - kRoom).si(), 10.0, 1e-9);
  EXPECT_EQ(air.likely, kRoom);
  EXPECT_EQ(air.latest, kRoom);
}

TEST(BreakerState, SettlesWhereTheClosedFormPreloadStarts) {
  BreakerState warmed(kTwenty, TripCurve::Likely, kRoom);
  EXPECT_FALSE(warmed.advance(16.0 * ampere, 2.0 * units::hour).has_value());
  const BreakerState preloaded(kTwenty, TripCurve::Likely, kRoom, 16.0 * ampere);
  EXPECT_NEAR(warmed.theta(), preloaded.theta(), 1e-12);
  EXPECT_NEAR(warmed.timeToTrip(30.0 * ampere)->si(), preloaded.timeToTrip(30.0 * ampere)->si(), 1e-9);
}

TEST(BreakerState, DoesNotCareHowAnIntervalIsCut) {
  BreakerState whole(kTwenty, TripCurve::Latest, kRoom);
  BreakerState parts = whole;
  const auto wholeTrip = whole.advance(40.0 * ampere, 200.0 * second);
  ASSERT_TRUE(wholeTrip.has_value());
  EXPECT_FALSE(parts.advance(40.0 * ampere, 50.0 * second).has_value());
  const auto lateTrip = parts.advance(40.0 * ampere, 150.0 * second);
  ASSERT_TRUE(lateTrip.has_value());
  EXPECT_NEAR(wholeTrip->si(), lateTrip->si() + 50.0, 1e-9);
  EXPECT_NEAR(whole.theta(), parts.theta(), 1e-12);
  EXPECT_TRUE(parts.tripped());
}

TEST(BreakerState, CoolsOnceItHasTripped) {
  BreakerState state(kTwenty, TripCurve::Likely, kRoom);
  ASSERT_TRUE(state.advance(40.0 * ampere, 143.0 * second).has_value());
  EXPECT_LT(state.theta(), 0.5);
  EXPECT_FALSE(state.advance(40.0 * ampere, 100.0 * second).has_value());
  EXPECT_LT(state.theta(), 0.2);
  EXPECT_EQ(state.timeToTrip(1.0 * ampere), 0.0 * second);
}

TEST(BreakerState, HoldsAHalfOnDutyThatWouldTripIfSteady) {
  BreakerState state(kTwenty, TripCurve::Likely, kRoom);
  for (int cycle = 0; cycle < 200; ++cycle) {
    EXPECT_FALSE(state.advance(28.0 * ampere, 20.0 * second).has_value()) << cycle;
    EXPECT_FALSE(state.advance(0.0 * ampere, 20.0 * second).has_value());
  }
  EXPECT_TRUE(state.timeToTrip(28.0 * ampere).has_value());
}

}  // namespace
}  // namespace cordreach::physics
