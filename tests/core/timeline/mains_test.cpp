// SPDX-License-Identifier: GPL-3.0-or-later
// A panel's main in a day: it carries what all its circuits do, and sees their starts.
#include <gtest/gtest.h>

#include "support/day_builder.h"
#include "timeline/day.h"

namespace cordreach::timeline {
namespace {

using testing::DayBuilder;
using testing::fixedCurrent;
using testing::impedanceOhm;
using units::ampere;
using units::second;

// Two circuits of that breaker behind a main, which stands last among what protects.
Day behindMain(DayBuilder builder, double mainA) {
  Day day = builder.forHours(1);
  ProtectedPoles main{0, 0, 0, physics::Breaker{mainA * ampere}};
  main.panel = 0;
  day.protectedPoles.push_back(main);
  return day;
}

DayBuilder twoCircuits() {
  constexpr physics::Breaker kTwenty{20.0 * ampere};
  return DayBuilder().circuit({}, kTwenty).circuit({}, kTwenty);
}

TEST(Mains, CarryTheSumAndTakeEverythingOut) {
  const auto builder = twoCircuits()
                           .load(0, fixedCurrent(15.0, 0.999), 0)
                           .load(1, fixedCurrent(15.0, 0.999), 600)
                           .load(0, fixedCurrent(1.0, 0.999), 1800);
  DayOptions options;
  options.sampleEvery = 60.0 * second;
  const Day day = behindMain(builder, 20.0);
  const DayResult result = runDay(day, options);
  EXPECT_NEAR(result.largestA[2], 30.0, 0.1);
  ASSERT_TRUE(result.trips[2].likely.has_value());
  // As the closed form has it, from 15 A carried for six time constants.
  const auto expected = physics::tripTime({20.0 * ampere}, physics::TripCurve::Likely, 30.0 * ampere, 15.0 * ampere,
                                          physics::defaultBreakerAir());
  EXPECT_NEAR(result.trips[2].likely->si(), 600.0 + expected->si(), 2.0);
  EXPECT_FALSE(result.trips[0].likely || result.trips[1].likely);
  for (const Sample& sample : result.samples) {
    if (sample.at > *result.trips[2].likely) {
      EXPECT_EQ(sample.circuitA[0] + sample.circuitA[1] + sample.circuitA[2], 0.0);
    }
  }
}

TEST(Mains, LetTwoOppositeLoadsAddAsPhasors) {
  const auto builder = twoCircuits().load(0, impedanceOhm({0.0, 12.0}), 0).load(1, impedanceOhm({12.0, 0.0}), 0);
  const DayResult result = runDay(behindMain(builder, 100.0));
  EXPECT_NEAR(result.largestA[2], std::hypot(result.largestA[0], result.largestA[1]), 0.3);
}

// 8 A run on the other circuit. The start of 90 A is one too many for a small main, not for its own breaker.
TEST(Mains, SeeAStartBehindThem) {
  const StartPeak peak{impedanceOhm(120.0 / 90.0), 3.0 * second};
  const auto builder =
      twoCircuits().load(1, fixedCurrent(8.0, 0.999), 0).load(0, fixedCurrent(3.0, 0.999), 60, {}, peak);
  const DayResult without = runDay(
      behindMain(twoCircuits().load(1, fixedCurrent(8.0, 0.999), 0).load(0, fixedCurrent(3.0, 0.999), 60), 15.0));
  EXPECT_FALSE(without.trips[2].earliest.has_value());
  const DayResult result = runDay(behindMain(builder, 15.0));
  ASSERT_TRUE(result.trips[2].earliest.has_value());
  EXPECT_GE(result.trips[2].earliest->si(), 60.0);
  EXPECT_LT(result.trips[2].earliest->si(), 63.1);
  EXPECT_FALSE(result.trips[1].earliest.has_value());  // no start on this one
}

TEST(Mains, OfAPanelCarryWhatHangsOnPanelsBehindIt) {
  auto builder = twoCircuits().load(0, fixedCurrent(10.0, 0.999), 0).load(1, fixedCurrent(10.0, 0.999), 0);
  network::Panel behind;
  behind.fedFrom = 0;
  behind.feedPhases = {0};
  builder.day.network.panels.push_back(behind);
  builder.day.network.circuits[1].panel = 1;
  Day day = behindMain(builder, 100.0);
  ProtectedPoles other = day.protectedPoles.back();
  other.panel = 1;
  day.protectedPoles.push_back(other);
  const DayResult result = runDay(day);
  EXPECT_NEAR(result.largestA[2], 20.0, 0.1);
  EXPECT_NEAR(result.largestA[3], 10.0, 0.1);
}

}  // namespace
}  // namespace cordreach::timeline
