// SPDX-License-Identifier: GPL-3.0-or-later
// The curves' constants and their order.
#include "physics/breaker_curve.h"

#include <cmath>

#include <gtest/gtest.h>

namespace cordreach::physics {
namespace {

using units::ampere;

const Breaker kTwenty{20.0 * ampere};
units::Temperature celsius(double value) { return units::Temperature::fromCelsius(value); }

double ultimate(const Breaker& breaker, TripCurve curve, double airC) {
  return thermalCurve(breaker, curve, celsius(airC)).ultimate / breaker.rating;
}

TEST(BreakerCurve, LatestTimeConstantFollowsTheRatingsCalibrationTime) {
  const double perSecond = 1.0 / std::log(4.0 / (4.0 - 1.35 * 1.35));
  for (const auto& [ratingA, timeS] : {std::pair{20.0, 120.0}, {30.0, 120.0}, {40.0, 240.0}, {70.0, 360.0}}) {
    const ThermalCurve curve = thermalCurve({ratingA * ampere}, TripCurve::Latest, celsius(25));
    EXPECT_NEAR(curve.timeConstant.si(), timeS * perSecond, 1e-9) << ratingA;
  }
}

TEST(BreakerCurve, EarliestHasItsOwnFigureAtTheHoldTestsAir) {
  EXPECT_DOUBLE_EQ(ultimate(kTwenty, TripCurve::Earliest, 40), 1.02);
  EXPECT_NEAR(ultimate(kTwenty, TripCurve::Earliest, 25), 1.02 * std::sqrt(105.0 / 90.0), 1e-12);
}

TEST(BreakerCurve, StayInOrderInAnyAir) {
  for (const auto kind : {BreakerKind::ThermalMagnetic, BreakerKind::IecB, BreakerKind::Fuse}) {
    for (double airC = -30; airC <= 70; airC += 5) {
      const Breaker breaker{16.0 * ampere, kind};
      EXPECT_LT(ultimate(breaker, TripCurve::Earliest, airC), ultimate(breaker, TripCurve::Likely, airC)) << airC;
      EXPECT_LT(ultimate(breaker, TripCurve::Likely, airC), ultimate(breaker, TripCurve::Latest, airC)) << airC;
    }
  }
}

TEST(BreakerCurve, AirHotterThanTheBimetalLeavesNothingToCarry) {
  EXPECT_LT(ultimate(kTwenty, TripCurve::Earliest, 95), 0.15);
  EXPECT_GT(ultimate(kTwenty, TripCurve::Earliest, 95), 0.0);
}

TEST(InstantaneousPart, BelongsToTheKind) {
  EXPECT_DOUBLE_EQ(instantaneousTrip(kTwenty, TripCurve::Earliest)->pickUp.si(), 100.0);
  EXPECT_DOUBLE_EQ(instantaneousTrip(kTwenty, TripCurve::Latest)->pickUp.si(), 300.0);
  EXPECT_DOUBLE_EQ(instantaneousTrip({16.0 * ampere, BreakerKind::IecC}, TripCurve::Earliest)->pickUp.si(), 80.0);
  EXPECT_DOUBLE_EQ(instantaneousTrip({16.0 * ampere, BreakerKind::IecC}, TripCurve::Latest)->pickUp.si(), 160.0);
  EXPECT_FALSE(instantaneousTrip({15.0 * ampere, BreakerKind::Fuse}, TripCurve::Earliest).has_value());
}

}  // namespace
}  // namespace cordreach::physics
