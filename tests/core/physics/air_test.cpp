// SPDX-License-Identifier: GPL-3.0-or-later
// The air fits against the tables of heat-transfer textbooks.
#include "physics/air.h"

#include <gtest/gtest.h>

namespace cordreach::physics {
namespace {

TEST(Air, AtThreeHundredKelvinIsTheTextbooks) {
  const AirProperties air = airAt(units::Temperature::fromKelvin(300));
  EXPECT_NEAR(air.conductivityWPerMK, 0.0263, 0.0001);
  EXPECT_NEAR(air.viscosityM2PerS, 15.89e-6, 0.025 * 15.89e-6);
  EXPECT_NEAR(air.prandtl(), 0.707, 0.002);
}

TEST(Air, GetsThickerAndConductsBetterAsItWarms) {
  AirProperties cooler = airAt(units::Temperature::fromKelvin(270));
  for (double kelvin = 280; kelvin <= 400; kelvin += 10) {
    const AirProperties warmer = airAt(units::Temperature::fromKelvin(kelvin));
    EXPECT_GT(warmer.conductivityWPerMK, cooler.conductivityWPerMK);
    EXPECT_GT(warmer.viscosityM2PerS, cooler.viscosityM2PerS);
    cooler = warmer;
  }
}

}  // namespace
}  // namespace cordreach::physics
