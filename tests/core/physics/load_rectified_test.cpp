// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/load_rectified.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/physics/load_test_support.h"

namespace cordreach::physics {
namespace {

std::shared_ptr<const LoadLaw> burnisher() {
  return makeRectifiedLaw({115.0 * units::volt, 14.6 * units::ampere, 1600.0, 1.0});
}

TEST(RectifiedMotor, DrawsTheSameAmpsAtAnyVoltsItTurnsAt) {
  const auto law = burnisher();
  for (const double v : {50.0, 90.0, 107.4, 112.9, 120.0}) EXPECT_NEAR(totalA(*law, v), 14.6, 1e-9) << v;
}

TEST(RectifiedMotor, SlowsWithVolts) {
  const auto law = burnisher();
  EXPECT_NEAR(law->at(115.0).speedRpm.value(), 1600.0, 1e-9);
  EXPECT_LT(law->at(105.0).speedRpm.value(), 1460.0);
}

TEST(RectifiedMotor, TakesPowerInPhaseAtAPowerFactorOfNineTenths) {
  const LoadPoint point = burnisher()->at(115.0);
  EXPECT_EQ(point.admittanceS.imag(), 0.0);
  EXPECT_NEAR(inputW(*burnisher(), 115.0) / (115.0 * 14.6), 0.9003, 1e-4);
  EXPECT_NEAR(point.thirdHarmonicA, point.admittanceS.real() * 115.0 / 3.0, 1e-6);
}

TEST(RectifiedMotor, StandsAtAFewVoltsAndGoesOnAsAnImpedance) {
  const auto law = burnisher();
  const double edge = law->pullOutVoltageV();
  EXPECT_GT(edge, 5.0);
  EXPECT_LT(edge, 20.0);
  EXPECT_FALSE(law->at(0.9 * edge).hasRunningPoint);
  EXPECT_EQ(law->at(0.9 * edge).speedRpm.value(), 0.0);
  EXPECT_NEAR(totalA(*law, 0.5 * edge), 7.3, 1e-9);
}

TEST(RectifiedMotor, HeldFastIsLimitedByItsArmatureAlone) {
  const LoadPoint point = burnisher()->stalledAt(115.0);
  EXPECT_FALSE(point.hasRunningPoint);
  EXPECT_GT(std::abs(point.admittanceS) * 115.0, 8.0 * 14.6);
  EXPECT_EQ(burnisher()->stalledAt(0.0).admittanceS, 0.0);
}

}  // namespace
}  // namespace cordreach::physics
