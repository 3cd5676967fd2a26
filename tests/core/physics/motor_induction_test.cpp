// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/motor_induction.h"

#include <gtest/gtest.h>

namespace cordreach::physics {
namespace {

InductionPlate reference() {
  InductionPlate plate;
  plate.voltageV = 120.0;
  plate.currentA = 14.72;
  plate.powerFactor = 0.85;
  plate.efficiency = 0.744;
  plate.fullLoadSlip = 0.0394;
  plate.breakdownRatio = 2.24;
  return plate;
}

TEST(InductionFit, FindsTheReferenceMachineAgain) {
  const auto fit = fitInduction(reference());
  ASSERT_TRUE(fit.ok());
  EXPECT_NEAR(fit.value().circuit.r1Ohm, 0.70, 0.01);
  EXPECT_NEAR(fit.value().circuit.x1Ohm, 0.80, 0.01);
  EXPECT_NEAR(fit.value().circuit.r2Ohm, 0.32, 0.01);
  EXPECT_NEAR(fit.value().circuit.xmOhm, 18.0, 0.4);
  EXPECT_NEAR(fit.value().circuit.rotationalW, 180.0, 1.0);
}

TEST(InductionFit, MeetsEveryTargetOfThePlate) {
  const InductionPlate plate = reference();
  const InductionFit fit = fitInduction(plate).value();
  const InductionBalance full = inductionAt(fit.circuit, 120.0, plate.fullLoadSlip, plate.fullLoadSlip);
  EXPECT_NEAR(std::abs(full.currentA), plate.currentA, 1e-9);
  EXPECT_NEAR(full.currentA.real() / std::abs(full.currentA), plate.powerFactor, 1e-9);
  EXPECT_NEAR(full.outputW / full.inputW, plate.efficiency, 1e-9);
  const double mostW = rotorView(fit.circuit).breakdownWPerV2() * 120.0 * 120.0 - fit.lossAirGapW;
  EXPECT_NEAR(mostW / fit.loadAirGapW, plate.breakdownRatio, 1e-6);
}

TEST(InductionFit, SaysWhenNoCircuitHasThatPlate) {
  InductionPlate plate = reference();
  plate.efficiency = 0.99;
  EXPECT_EQ(fitInduction(plate).error().code, "load.no_circuit");
  plate = reference();
  plate.breakdownRatio = 50.0;
  EXPECT_FALSE(fitInduction(plate).ok());
}

TEST(AdmittanceOfRotor, IsThatOfTheCircuit) {
  const InductionCircuit c{0.70, 0.80, 0.32, 0.80, 18.0, 180.0};
  const AdmittanceOfRotor admittance = admittanceOfRotor(c);
  for (const double slip : {0.01, 0.04, 0.3, 1.0}) {
    const auto direct = inductionAt(c, 1.0, slip, 0.04).currentA;
    EXPECT_NEAR(std::abs(admittance.at(c.r2Ohm / slip) - direct), 0.0, 1e-12);
    const double a = c.r2Ohm / slip;
    const auto slope = (admittance.at(a + 1e-5) - admittance.at(a - 1e-5)) / 2e-5;
    EXPECT_NEAR(std::abs(admittance.slopeAt(a) - slope), 0.0, 1e-7);
  }
}

}  // namespace
}  // namespace cordreach::physics
