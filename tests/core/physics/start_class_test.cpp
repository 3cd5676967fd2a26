// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/start_class.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/physics/load_test_support.h"

namespace cordreach::physics {
namespace {

TEST(StartBand, IsAMultipleOfPlateAmps) {
  const StartBand band = startBand(plateOf(LoadModel::Induction, 115.0, 12.0));
  EXPECT_DOUBLE_EQ(band.peakLow.si(), 60.0);
  EXPECT_DOUBLE_EQ(band.peakHigh.si(), 96.0);
  EXPECT_GT(band.duration(StartEdge::Typical), band.shortest);
  EXPECT_LT(band.duration(StartEdge::Typical), band.longest);
}

TEST(StartBand, OfAnElectronicSupplyIsInAmperes) {
  EXPECT_DOUBLE_EQ(startBand(plateOf(LoadModel::ElectronicPlain, 120.0, 1.0)).peakHigh.si(), 50.0);
}

TEST(StartBand, FollowsLockedRotorAmpsWhenTheyAreKnown) {
  Nameplate plate = plateOf(LoadModel::Induction, 115.0, 12.0);
  plate.lockedRotorCurrent = 70.0 * units::ampere;
  EXPECT_DOUBLE_EQ(startBand(plate).peak(StartEdge::Low).si(), 70.0);
}

TEST(StartLaw, DrawsItsPeakAtPlateVoltsAndLessBehindACord) {
  const Nameplate plate = plateOf(LoadModel::Induction, 115.0, 12.0);
  const auto law = makeStartLaw(plate, StartEdge::Typical);
  EXPECT_NEAR(totalA(*law, 115.0), 78.0, 1e-9);
  // Behind a 110 ft run of 12 AWG with 0.06 ohm of source, 50 ft of 12 AWG and 50 ft of 14 AWG.
  const double runOhm = 0.06 + 220.0 * 1.588e-3 * 1.06;
  const double cordOhm = 100.0 * (1.62e-3 + 2.58e-3);
  const std::complex<double> machine = 1.0 / law->at(80.0).admittanceS;
  const std::complex<double> currentA = 120.0 / (machine + runOhm + cordOhm);
  EXPECT_NEAR(std::abs(currentA), 57.0, 3.0);
  EXPECT_NEAR(std::abs(120.0 - currentA * runOhm), 98.0, 3.0);
}

TEST(CodeLetter, OutsideTheTableIsAnError) {
  EXPECT_EQ(lockedRotorAmps('I', 1.0 * units::horsepower, 115.0 * units::volt).error().code,
            "motor.unknown_code_letter");
  EXPECT_FALSE(lockedRotorAmps('V', 1.0 * units::horsepower, 115.0 * units::volt).value().high.has_value());
}

TEST(RunUp, DoesNotHappenWhenTheLoadAsksForMoreThanTheMotorHas) {
  EXPECT_FALSE(relativeRunUpTime(0.46, 1.6, 0.35).has_value());
  EXPECT_NEAR(relativeRunUpTime(1.0, 1.6, 0.35).value(), 1.0, 1e-12);
}

}  // namespace
}  // namespace cordreach::physics
