// SPDX-License-Identifier: GPL-3.0-or-later
// The cross-section's closed forms, and cords from the tables put into them.
#include "physics/cord_geometry.h"

#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "physics/cord_build.h"

namespace cordreach::physics {
namespace {

using tables::CordFamily;
using units::WireSize;

constexpr double kPvc = 5.0;    // K m/W
constexpr double kVoids = 1.2;  // the likely corner's factor

double coreToSurface(int gauge, CordFamily family) {
  return kPvc * kVoids * geometryOf(buildOf(WireSize::awg(gauge), 3, family, 2)).coreToSurface;
}

TEST(CoreToSurface, OfTypicalCordsIsTheComputedOne) {
  EXPECT_NEAR(coreToSurface(18, CordFamily::Hard), 0.99, 0.01);
  EXPECT_NEAR(coreToSurface(16, CordFamily::Hard), 0.91, 0.01);
  EXPECT_NEAR(coreToSurface(14, CordFamily::Hard), 0.85, 0.01);
  EXPECT_NEAR(coreToSurface(12, CordFamily::Hard), 0.79, 0.01);
  EXPECT_NEAR(coreToSurface(16, CordFamily::ExtraHard), 1.10, 0.01);
  EXPECT_NEAR(coreToSurface(14, CordFamily::ExtraHard), 1.13, 0.01);
  EXPECT_NEAR(coreToSurface(12, CordFamily::ExtraHard), 1.08, 0.01);
}

TEST(CoreToSurface, OfTwoCoresIsTheSumOfSourcesAndImages) {
  // Two line sources of half the heat at b and -b in a circle of radius R: images of the same sign at R^2/b.
  CordBuild build{.copperArea = 1.3 * units::squareMillimetre,
                  .strandDiameter = 1.5 * units::millimetre,
                  .insulation = 0.75 * units::millimetre,
                  .outerDiameter = 8.0 * units::millimetre,
                  .crossSection = 50.0 * units::squareMillimetre,
                  .conductors = 2,
                  .carrying = 2};
  const double R = 4.0, b = 1.5, copper = 0.75;
  const double image = R * R / b;
  const auto potential = [&](double at, double source, double mirror) {
    return std::log(std::abs(at - mirror) * b / (std::abs(at - source) * R));
  };
  const double own = std::log((image - b) * b / (copper * R));
  const double expected = (own + potential(b, -b, -image)) / (4.0 * std::numbers::pi);
  EXPECT_NEAR(geometryOf(build).coreToSurface, expected, 1e-12);
}

TEST(CoreToSurface, PerWattIsLowerWithThreeCoresCarrying) {
  const double two = geometryOf(buildOf(WireSize::awg(14), 3, CordFamily::Hard, 2)).coreToSurface;
  const double three = geometryOf(buildOf(WireSize::awg(14), 3, CordFamily::Hard, 3)).coreToSurface;
  EXPECT_LT(three, two);
  EXPECT_GT(three, 0.6 * two);
}

TEST(Capacity, IsThatOfCopperAndPlasticInTheCrossSection) {
  const CordBuild build = buildOf(WireSize::awg(16), 3, CordFamily::Hard, 2);
  const CordGeometry geometry = geometryOf(build);
  EXPECT_NEAR(geometry.carryingCopper.si(), 2 * 1.309e-6 * 3.45e6, 0.01);
  const double whole = (geometry.carryingCopper + geometry.liveInsulation + geometry.rest).si();
  EXPECT_GT(whole, 3 * 1.309e-6 * 3.45e6);
  EXPECT_LT(whole, build.crossSection.si() * 1.7e6 + 3 * 1.309e-6 * 3.45e6);
}

TEST(CordBuild, StandsInOnTheHotSideWhereNoTableHasTheCord) {
  const CordBuild eight = buildOf(WireSize::awg(8), 3, CordFamily::Hard, 2);
  const CordBuild ten = buildOf(WireSize::awg(10), 3, CordFamily::Hard, 2);
  EXPECT_EQ(eight.outerDiameter, ten.outerDiameter);
  EXPECT_EQ(eight.copperArea, ten.copperArea);
}

TEST(CordBuild, AnswersForEverySizeFamilyAndNumberOfConductors) {
  for (const auto family :
       {CordFamily::Hard, CordFamily::ExtraHard, CordFamily::Vacuum, CordFamily::Parallel1, CordFamily::Parallel2,
        CordFamily::Parallel3, CordFamily::MetricLight, CordFamily::MetricHeavy}) {
    for (const int conductors : {2, 3, 4}) {
      for (int gauge = 24; gauge >= 0; --gauge) {
        const CordGeometry geometry = geometryOf(buildOf(WireSize::awg(gauge), conductors, family, 2));
        EXPECT_GT(geometry.coreToSurface, 0.0) << gauge;
        EXPECT_GT(geometry.rest.si(), 0.0) << gauge;
      }
    }
  }
}

}  // namespace
}  // namespace cordreach::physics
