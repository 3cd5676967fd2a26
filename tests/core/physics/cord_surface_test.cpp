// SPDX-License-Identifier: GPL-3.0-or-later
// The balance at the jacket.
#include "physics/cord_surface.h"

#include <gtest/gtest.h>

namespace cordreach::physics {
namespace {

units::Temperature celsius(double value) { return units::Temperature::fromCelsius(value); }

CordSurface jacket() {
  CordSurface surface;
  surface.diameter = 8.2 * units::millimetre;
  surface.emissivity = 0.93;
  return surface;
}

TEST(CordSurface, GivesOffWhatReachesItFromInside) {
  for (const double insideC : {-5.0, 24.9, 25.0, 25.001, 40.0, 120.0, 280.0}) {
    const double inner = 0.4;
    const auto at = surfaceTemperature(jacket(), celsius(insideC), inner, celsius(25));
    EXPECT_NEAR(jacket().lossWPerM(at, celsius(25)), (insideC - at.celsius()) / inner, 1e-5) << insideC;
  }
}

TEST(CordSurface, WithNothingBetweenIsAsHotAsTheInside) {
  EXPECT_EQ(surfaceTemperature(jacket(), celsius(60), 0.0, celsius(25)), celsius(60));
}

TEST(CordSurface, SlopeIsThatOfTheLossWithinAFewPerCent) {
  for (const double riseK : {5.0, 20.0, 60.0}) {
    const auto loss = [&](double rise) { return jacket().lossWPerM(celsius(25 + rise), celsius(25)); };
    const double slope = (loss(riseK + 0.01) - loss(riseK - 0.01)) / 0.02;
    EXPECT_NEAR(jacket().slopeWPerMK(celsius(25 + riseK), celsius(25)) / slope, 1.0, 0.04) << riseK;
  }
}

TEST(CordSurface, ScaleAppliesToAirAndCoverAlike) {
  CordSurface surface = jacket();
  const double plain = surface.lossWPerM(celsius(50), celsius(25));
  surface.scale = 0.6;
  EXPECT_NEAR(surface.lossWPerM(celsius(50), celsius(25)), 0.6 * plain, 1e-12);
  surface.throughCover = 5.0 * units::kelvinMetrePerWatt;
  EXPECT_NEAR(surface.lossWPerM(celsius(50), celsius(25)), 0.6 * 5.0, 1e-12);
}

}  // namespace
}  // namespace cordreach::physics
