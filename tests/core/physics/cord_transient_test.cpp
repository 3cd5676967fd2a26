// SPDX-License-Identifier: GPL-3.0-or-later
// A cord through a duty.
#include "physics/cord_transient.h"

#include <gtest/gtest.h>

#include "physics/cord_heat.h"

namespace cordreach::physics {
namespace {

using tables::Laying;
using units::ampere;
using units::minute;
using units::WireSize;

units::Temperature celsius(double value) { return units::Temperature::fromCelsius(value); }

CordSection section(Laying laying, double turns = 0.0) {
  return {.size = WireSize::awg(16), .laying = laying, .turns = turns};
}

TEST(CordTransient, StartsAtTheAir) {
  const CordTransient cord(section(Laying::Floor), celsius(21), Corner::High);
  EXPECT_NEAR(cord.now().conductor.celsius(), 21.0, 1e-9);
  EXPECT_NEAR(cord.now().surface.celsius(), 21.0, 1e-6);
}

TEST(CordTransient, KeepsItsCornersInOrderOnTheWay) {
  CordTransient low(section(Laying::Coiled, 12), celsius(25), Corner::Low);
  CordTransient likely(section(Laying::Coiled, 12), celsius(25));
  CordTransient high(section(Laying::Coiled, 12), celsius(25), Corner::High);
  for (int interval = 0; interval < 24; ++interval) {
    for (CordTransient* cord : {&low, &likely, &high}) cord->advance(11.0 * ampere, 5.0 * minute);
    EXPECT_LT(low.now().conductor, likely.now().conductor);
    EXPECT_LT(likely.now().conductor, high.now().conductor);
  }
}

TEST(CordTransient, CoiledHeatsSlowlyAndFar) {
  const auto coiled = section(Laying::Coiled, 12);
  const CordTransient cord(coiled, celsius(25));
  const auto time = cord.timeToReach(celsius(60), 12.0 * ampere, 2.0 * units::hour);
  ASSERT_TRUE(time.has_value());
  EXPECT_GT(*time, 8.0 * minute);
  EXPECT_LT(*time, 20.0 * minute);
  const CordTransient flat(section(Laying::Floor), celsius(25));
  EXPECT_FALSE(flat.timeToReach(celsius(60), 12.0 * ampere, 2.0 * units::hour).has_value());
}

TEST(CordTransient, AskedForATimeStaysWhereItIs) {
  CordTransient cord(section(Laying::Floor), celsius(25));
  cord.advance(10.0 * ampere, 3.0 * minute);
  const HeatResult before = cord.now();
  EXPECT_TRUE(cord.timeToReach(celsius(70), 40.0 * ampere, 1.0 * units::hour).has_value());
  EXPECT_EQ(cord.now(), before);
}

TEST(CordTransient, LaidOutAfterACoilCoolsToTheFloorsSteadyState) {
  CordTransient cord(section(Laying::Coiled, 10), celsius(25), Corner::High);
  cord.advance(10.0 * ampere, 1.0 * units::hour);
  const auto coiled = cord.now().conductor;
  cord.lay(section(Laying::Floor), celsius(25));
  cord.advance(10.0 * ampere, 3.0 * units::hour);
  EXPECT_LT(cord.now().conductor, coiled);
  EXPECT_NEAR(cord.now().conductor.celsius(),
              steady(section(Laying::Floor), 10.0 * ampere, celsius(25), Corner::High)->conductor.celsius(), 0.01);
}

TEST(CordTransient, BeyondTheModelStaysThere) {
  CordTransient cord(section(Laying::Coiled, 20), celsius(25));
  cord.advance(20.0 * ampere, 5.0 * units::hour);
  EXPECT_TRUE(cord.beyondModel());
  cord.advance(0.0 * ampere, 5.0 * units::hour);
  EXPECT_TRUE(cord.beyondModel());
}

}  // namespace
}  // namespace cordreach::physics
