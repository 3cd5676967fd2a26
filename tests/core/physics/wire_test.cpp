// SPDX-License-Identifier: GPL-3.0-or-later
// Resistance over temperature, and wires in walls.
#include "physics/wire.h"

#include <gtest/gtest.h>

#include "tables/dc_resistance.h"
#include "tables/iec_conductors.h"

namespace cordreach::physics {
namespace {

using tables::Metal;
using units::ampere;
using units::ohmPerKilometre;
using units::WireSize;

units::Temperature celsius(double value) { return units::Temperature::fromCelsius(value); }

TEST(WireResistance, OfGaugesIsThePrintedOneWithinOnePerCent) {
  for (const Metal metal : {Metal::Copper, Metal::Aluminium}) {
    for (int gauge = 18; gauge >= -3; --gauge) {
      const auto printed = tables::dcResistance75(WireSize::awg(gauge), metal, tables::Stranding::Stranded);
      if (!printed) continue;
      const auto ours = wireResistance(WireSize::awg(gauge), metal, WireUse::Building, celsius(75));
      EXPECT_NEAR(ours / printed->value, 1.0, 0.01) << gauge << " AWG";
    }
  }
}

TEST(WireResistance, OfListedMetricSizesIsTheGreatestOfTheStandard) {
  const WireSize size = WireSize::squareMillimetres(1.5);
  EXPECT_NEAR(cordResistance(size, kReferenceTemperature).in(ohmPerKilometre), 13.3, 1e-9);
  EXPECT_NEAR(wireResistance(size, Metal::Copper, WireUse::Building, kReferenceTemperature).in(ohmPerKilometre), 12.1,
              1e-9);
}

TEST(WireResistance, OfAnUnlistedMetricSizeIsTakenByAreaFromTheNextSmaller) {
  EXPECT_NEAR(cordResistance(WireSize::squareMillimetres(1.25), kReferenceTemperature).in(ohmPerKilometre), 15.6, 1e-9);
}

TEST(WireResistance, NeverGrowsWithArea) {
  double previous = 1e9;
  for (double mm2 = 0.5; mm2 <= 16.0; mm2 += 0.05) {
    const double ohm = cordResistance(WireSize::squareMillimetres(mm2), celsius(40)).in(ohmPerKilometre);
    EXPECT_LE(ohm, previous + 1e-9) << mm2;
    previous = ohm;
  }
}

TEST(ResistanceRatio, GrowsByTheMetalsCoefficientFromTwentyDegrees) {
  EXPECT_DOUBLE_EQ(resistanceRatio(Metal::Copper, celsius(20)), 1.0);
  EXPECT_NEAR(resistanceRatio(Metal::Copper, celsius(75)), 1.2161, 1e-4);
  EXPECT_NEAR(resistanceRatio(Metal::Aluminium, celsius(75)), 1.0 + 55 * 0.00403, 1e-9);
}

TEST(BuildingWire, IsAtItsRatingAtItsAmpacityInThirtyDegrees) {
  const WireSize twelve = WireSize::awg(12);
  EXPECT_NEAR(buildingWireTemperature(twelve, Metal::Copper, 30.0 * ampere, celsius(30)).celsius(), 90.0, 1e-9);
  EXPECT_NEAR(buildingWireTemperature(twelve, Metal::Copper, 20.0 * ampere, celsius(30), celsius(60)).celsius(), 60.0,
              1e-9);
  const WireSize metric = WireSize::squareMillimetres(2.5);
  EXPECT_NEAR(buildingWireTemperature(metric, Metal::Copper, 23.0 * ampere, celsius(30)).celsius(), 70.0, 1e-9);
}

TEST(BuildingWire, WithoutARowStaysOnTheWarmSide) {
  const double printed =
      buildingWireTemperature(WireSize::awg(14), Metal::Copper, 20.0 * ampere, celsius(30)).celsius();
  EXPECT_GT(buildingWireTemperature(WireSize::awg(16), Metal::Copper, 20.0 * ampere, celsius(30)).celsius(), printed);
  EXPECT_DOUBLE_EQ(buildingWireTemperature(WireSize::awg(13), Metal::Copper, 20.0 * ampere, celsius(30)).celsius(),
                   printed);
  const auto metric = [](double mm2, Metal metal) {
    return buildingWireTemperature(WireSize::squareMillimetres(mm2), metal, 15.0 * ampere, celsius(30)).celsius();
  };
  EXPECT_GT(metric(1.0, Metal::Copper), metric(1.5, Metal::Copper));
  EXPECT_GT(metric(2.5, Metal::Aluminium), metric(2.5, Metal::Copper));
}

}  // namespace
}  // namespace cordreach::physics
