// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/start_trip.h"

#include <gtest/gtest.h>

#include <cmath>

#include "physics/start_dc.h"

namespace cordreach::physics {
namespace {

const Breaker kTwenty{20.0 * units::ampere};
const BreakerAir kAir = BreakerAir::all(defaultBreakerAir());

StartRun steady(double amps, double seconds, bool completes) {
  StartRun run;
  for (int i = 0; i <= 10; ++i) run.samples.push_back({seconds * i / 10.0, amps, amps, 100.0, 0.0});
  run.peak = run.settled = amps * units::ampere;
  if (completes) run.time95 = units::Duration::fromSi(seconds);
  return run;
}

TEST(StartTrip, OfASteadyCurrentIsTheBreakersOwnTime) {
  const TripTimes times = trip(kTwenty, 70.0 * units::ampere, 5.0 * units::ampere, kAir);
  const TripTimes through = startTrip(steady(70.0, 2.0, false), {kTwenty, kAir, 5.0 * units::ampere, 0.0});
  for (const TripCurve curve : kTripCurves) {
    EXPECT_NEAR(through.at(curve)->si(), times.at(curve)->si(), 1e-9);
  }
}

TEST(StartTrip, HoldsWhenTheStartIsOverBefore) {
  const TripTimes through = startTrip(steady(70.0, 0.5, true), {kTwenty, kAir, {}, 0.0});
  EXPECT_EQ(through, TripTimes{});
}

// Peaks of 123 A rms lie over the earliest curve's 100 A and under the likely one's 175 A.
TEST(StartTrip, TheInstantaneousPartSeesTheVeryFirstPeak) {
  const DcStart burnisher{{0.459, 0.6 * units::ohm}, 0.107, units::Torque::fromSi(0.6)};
  const StartRun run = startDc(burnisher, 104.0 * units::volt, 0.25 * units::ohm);
  ASSERT_GT(run.peak.si(), 100.0);
  const TripTimes through = startTrip(run, {kTwenty, kAir, {}, 0.0});
  EXPECT_NEAR(through.earliest->si(), 0.008, 1e-6);
  EXPECT_FALSE(through.likely.has_value());
}

TEST(StartTrip, OthersOnTheCircuitAddAsPhasors) {
  StartSample sample{0.0, {30.0, -40.0}, std::sqrt(2500.0 + 100.0), 100.0, 0.0};
  EXPECT_NEAR(circuitAmps(sample, {10.0, 0.0}).si(), std::sqrt(1600.0 + 1600.0 + 100.0), 1e-9);
}

}  // namespace
}  // namespace cordreach::physics
