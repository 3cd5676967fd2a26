// SPDX-License-Identifier: GPL-3.0-or-later
// The correlations' own shape; published values stand in the published tests.
#include "physics/cord_convection.h"

#include <cmath>

#include <gtest/gtest.h>

namespace cordreach::physics {
namespace {

units::Temperature celsius(double value) { return units::Temperature::fromCelsius(value); }

TEST(MorganBands, MeetWithinTwoPerCent) {
  for (const double edge : {1e-2, 1e2, 1e4, 1e7}) {
    EXPECT_NEAR(nusseltMorgan(edge * 1.0001) / nusseltMorgan(edge), 1.0, 0.02) << edge;
  }
}

TEST(ChurchillChuOnCords, LiesNineToEighteenPerCentBelowMorgan) {
  for (const double diameterMm : {7.6, 8.2, 9.2, 10.5, 13.6}) {
    for (const double riseK : {10.0, 20.0, 40.0}) {
      const auto diameter = diameterMm * units::millimetre;
      const double morgan = convectionWPerM2K(ConvectionLaw::Morgan, diameter, celsius(25 + riseK), celsius(25));
      const double cautious =
          convectionWPerM2K(ConvectionLaw::ChurchillChu, diameter, celsius(25 + riseK), celsius(25));
      EXPECT_GT(cautious / morgan, 0.81) << diameterMm << " mm, " << riseK << " K";
      EXPECT_LT(cautious / morgan, 0.93) << diameterMm << " mm, " << riseK << " K";
    }
  }
}

TEST(Convection, IsTheSameHotterOrColderThanTheAirAtOneFilmTemperature) {
  const auto diameter = 8.2 * units::millimetre;
  EXPECT_NEAR(convectionWPerM2K(ConvectionLaw::Morgan, diameter, celsius(40), celsius(20)),
              convectionWPerM2K(ConvectionLaw::Morgan, diameter, celsius(20), celsius(40)), 1e-12);
}

TEST(Radiation, IsTheSlopeOfTheFourthPowerAtSmallRises) {
  const double t = 300.0;
  EXPECT_NEAR(radiationWPerM2K(1.0, units::Temperature::fromKelvin(t + 1e-6), units::Temperature::fromKelvin(t)),
              4.0 * 5.670374419e-8 * t * t * t, 1e-6);
}

}  // namespace
}  // namespace cordreach::physics
