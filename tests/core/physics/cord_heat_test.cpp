// SPDX-License-Identifier: GPL-3.0-or-later
// Steady temperatures, bands and what is made of a measured jacket.
#include "physics/cord_heat.h"

#include <gtest/gtest.h>

namespace cordreach::physics {
namespace {

using tables::Laying;
using units::ampere;
using units::WireSize;

units::Temperature celsius(double value) { return units::Temperature::fromCelsius(value); }

CordSection section(Laying laying, double turns = 0.0) {
  return {.size = WireSize::awg(16), .laying = laying, .turns = turns};
}

double riseK(const CordSection& cord, double amps, Corner corner = Corner::Likely) {
  return (steady(cord, amps * ampere, celsius(25), corner).value().conductor - celsius(25)).si();
}

TEST(Steady, LayingsRankAsTheyKeepHeatIn) {
  EXPECT_LT(riseK(section(Laying::Straight), 13), riseK(section(Laying::Floor), 13));
  EXPECT_LT(riseK(section(Laying::Floor), 13), riseK(section(Laying::Carpet), 13));
  EXPECT_LT(riseK(section(Laying::Carpet), 13), riseK(section(Laying::Covered), 13));
  EXPECT_LT(riseK(section(Laying::Covered), 13), riseK(section(Laying::Coiled, 10), 13));
  EXPECT_LT(riseK(section(Laying::Coiled, 10), 13), riseK(section(Laying::Coiled, 20), 13));
  EXPECT_LT(riseK(section(Laying::Reel, 1), 13), riseK(section(Laying::Reel, 3), 13));
}

TEST(Steady, ThreeConductorsCarryingAreHotterThanTwo) {
  CordSection three = section(Laying::Floor);
  three.carrying = 3;
  EXPECT_GT(riseK(three, 13), 1.2 * riseK(section(Laying::Floor), 13));
}

TEST(SteadyBand, OfAFloorIsAtLeastAQuarterOfTheRiseEachWay) {
  const HeatBand band = steadyBand(section(Laying::Floor), 15.0 * ampere, celsius(25));
  const double likely = (band.likely->conductor - celsius(25)).si();
  EXPECT_LE((band.low->conductor - celsius(25)).si(), 0.75 * likely + 1e-9);
  EXPECT_GE((band.high->conductor - celsius(25)).si(), 1.25 * likely - 1e-9);
}

TEST(SteadyBand, IsTheSameAsItsCornersOneByOne) {
  for (const Laying laying : {Laying::Straight, Laying::Covered, Laying::Coiled}) {
    const CordSection cord = section(laying, 8);
    const HeatBand band = steadyBand(cord, 12.0 * ampere, celsius(25));
    EXPECT_EQ(band.low, steady(cord, 12.0 * ampere, celsius(25), Corner::Low));
    EXPECT_EQ(band.likely, steady(cord, 12.0 * ampere, celsius(25)));
    EXPECT_EQ(band.high, steady(cord, 12.0 * ampere, celsius(25), Corner::High));
  }
}

TEST(SteadyBand, MayLeaveTheModelOnItsHighSideOnly) {
  const HeatBand band = steadyBand(section(Laying::Coiled, 10), 20.0 * ampere, celsius(25));
  EXPECT_TRUE(band.low.has_value());
  EXPECT_TRUE(band.likely.has_value());
  EXPECT_FALSE(band.high.has_value());
}

TEST(CurrentForLimit, BringsTheConductorToTheLimit) {
  const CordSection cord = section(Laying::Floor);
  const auto current = currentForLimit(cord, celsius(60), celsius(25), Corner::High);
  EXPECT_NEAR(steady(cord, current, celsius(25), Corner::High)->conductor.celsius(), 60.0, 0.001);
}

TEST(LossScale, MakesTheModelMeetTheMeasuredJacket) {
  CordSection cord = section(Laying::Floor);
  const auto before = steady(cord, 15.0 * ampere, celsius(25))->surface;
  cord.lossScale = lossScaleFrom(cord, 15.0 * ampere, celsius(25), before + 3.0 * units::kelvin);
  EXPECT_LT(cord.lossScale, 1.0);
  EXPECT_NEAR((steady(cord, 15.0 * ampere, celsius(25))->surface - before).si(), 3.0, 0.001);
}

TEST(LossScale, IsClampedAgainstMisreadings) {
  const CordSection cord = section(Laying::Floor);
  EXPECT_DOUBLE_EQ(lossScaleFrom(cord, 15.0 * ampere, celsius(25), celsius(25.5)), 1.5);
  EXPECT_DOUBLE_EQ(lossScaleFrom(cord, 15.0 * ampere, celsius(25), celsius(200)), 0.6);
}

}  // namespace
}  // namespace cordreach::physics
