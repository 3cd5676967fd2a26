// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/load_induction.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/physics/load_test_support.h"
#include "physics/motor_slip.h"

namespace cordreach::physics {
namespace {

InductionFit referenceFit() {
  InductionFit fit;
  fit.circuit = {0.70, 0.80, 0.32, 0.80, 18.0, 180.0};
  fit.lossAirGapW = 180.0 / (1.0 - 0.0394);
  fit.loadAirGapW = 1.5 * 745.7 / (1.0 - 0.0394);
  return fit;
}

TEST(ConstantTorqueSlip, MeetsTheTorqueEquation) {
  const InductionFit fit = referenceFit();
  const double airGapW = fit.loadAirGapW + fit.lossAirGapW;
  const ConstantTorqueSlip slip(fit.circuit, airGapW);
  for (const double above : {1e-6, 1e-3, 0.5, 20.0, 200.0}) {
    const double voltageV = slip.pullOutV() + above;
    const double s = fit.circuit.r2Ohm / slip.at(voltageV).rotorOhm;
    EXPECT_NEAR(inductionAt(fit.circuit, voltageV, s, 0.0394).airGapW, airGapW, 1e-8 * airGapW) << above;
  }
}

TEST(ConstantTorqueSlip, PullsOutWhereTheCircuitHasItsLargestTorque) {
  const InductionFit fit = referenceFit();
  const ConstantTorqueSlip slip(fit.circuit, 1350.0);
  double mostW = 0.0;
  for (double s = 0.001; s < 1.0; s += 0.0005) {
    mostW = std::max(mostW, inductionAt(fit.circuit, slip.pullOutV(), s, 0.0394).airGapW);
  }
  EXPECT_NEAR(mostW, 1350.0, 0.01);
}

TEST(FanSlip, TableAgreesWithTheEquilibriumToOnePartInAHundredMillion) {
  const InductionFit fit = referenceFit();
  const FanSlip slip(fit.circuit, {fit.loadAirGapW, fit.lossAirGapW, 0.0394}, 360.0);
  for (double s = 0.004; s < fit.circuit.r2Ohm / slip.pullOutRotorOhm(); s += 0.00137) {
    const double voltageV = slip.voltageAtSlip(s);
    if (voltageV > 360.0) continue;
    EXPECT_NEAR(fit.circuit.r2Ohm / slip.at(voltageV).rotorOhm, s, 1e-8 * s) << voltageV;
  }
}

TEST(FanSlip, PullsOutLaterThanConstantTorque) {
  const InductionFit fit = referenceFit();
  const ConstantTorqueSlip constant(fit.circuit, fit.loadAirGapW + fit.lossAirGapW);
  const FanSlip fan(fit.circuit, {fit.loadAirGapW, fit.lossAirGapW, 0.0394}, 360.0);
  EXPECT_LT(fan.pullOutV(), constant.pullOutV());
  EXPECT_NEAR(fan.at(120.0).rotorOhm, constant.at(120.0).rotorOhm, 0.02 * constant.at(120.0).rotorOhm);
}

TEST(InductionLaw, BelowPullOutHoldsItsAdmittanceAndHasNoRunningPoint) {
  for (const LoadModel model : {LoadModel::Induction, LoadModel::InductionFan}) {
    const auto law = lawOf(plateOf(model, 115.0, 12.0));
    const double edge = law->pullOutVoltageV();
    ASSERT_GT(edge, 30.0);
    EXPECT_TRUE(law->at(edge * (1.0 + 1e-9)).hasRunningPoint);
    const LoadPoint below = law->at(0.5 * edge);
    EXPECT_FALSE(below.hasRunningPoint);
    EXPECT_EQ(below.admittanceSlopeSPerV, std::complex<double>());
    EXPECT_NEAR(std::abs(below.admittanceS - law->at(edge * (1.0 + 1e-9)).admittanceS), 0.0, 1e-4);
  }
}

TEST(InductionLaw, StandsAtItsLockedRotorImpedance) {
  Nameplate plate = plateOf(LoadModel::Induction, 115.0, 15.0);
  const LoadPoint fitted = lawOf(plate)->stalledAt(100.0);
  EXPECT_FALSE(fitted.hasRunningPoint);
  // The fitted circuit stands at four to five times the plate's amps.
  EXPECT_NEAR(std::abs(fitted.admittanceS) * 115.0 / 15.0, 4.3, 0.3);
  plate.lockedRotorCurrent = 90.0 * units::ampere;
  const LoadPoint marked = lawOf(plate)->stalledAt(100.0);
  EXPECT_NEAR(std::abs(marked.admittanceS) * 115.0, 90.0, 1e-9);
  EXPECT_NEAR(marked.admittanceS.real() / std::abs(marked.admittanceS), kLockedRotorPowerFactor, 1e-12);
}

TEST(InductionLaw, SpeedIsThePlatesAtThePlatesVoltsAndFallsWithThem) {
  Nameplate plate = plateOf(LoadModel::Induction, 115.0, 14.5);
  plate.shaftPower = 1.4 * units::horsepower;
  plate.speedRpm = 1500.0;
  const auto law = lawOf(plate);
  EXPECT_NEAR(law->at(115.0).speedRpm.value(), 1500.0, 1e-6);
  EXPECT_LT(law->at(101.6).speedRpm.value(), 1480.0);
  EXPECT_EQ(law->at(20.0).speedRpm.value(), 0.0);
}

TEST(InductionLaw, OneAndFourTenthsHorsepowerAtLowVoltsDrawsTwoAmpsMore) {
  Nameplate plate = plateOf(LoadModel::Induction, 115.0, 14.5);
  plate.shaftPower = 1.4 * units::horsepower;
  EXPECT_NEAR(totalA(*lawOf(plate), 101.6), 16.5, 0.1);
}

TEST(InductionLaw, OnAThinLongCordStandsAtAboutThirtyNineAmps) {
  Nameplate plate = plateOf(LoadModel::Induction, 115.0, 14.5);
  plate.shaftPower = 1.4 * units::horsepower;
  // 75 ft of 14 AWG run, 100 ft of 16 AWG warm and 50 ft of 14 AWG cord, 0.06 ohm of source.
  const double seriesOhm = 0.06 + 150.0 * 2.525e-3 * 1.06 + 200.0 * 4.10e-3 * 1.25 + 100.0 * 2.58e-3 * 1.12;
  const std::complex<double> machine = 1.0 / lawOf(plate)->stalledAt(60.0).admittanceS;
  EXPECT_NEAR(120.0 / std::abs(machine + seriesOhm), 39.0, 1.5);
}

}  // namespace
}  // namespace cordreach::physics
