// SPDX-License-Identifier: GPL-3.0-or-later
// Motors against published answers. Beside each: source and status (seen, memory, own, closed form).
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "physics/load_induction.h"
#include "physics/motor_capacitor.h"
#include "physics/motor_dc.h"
#include "physics/motor_induction.h"
#include "physics/motor_single_phase.h"
#include "physics/motor_slip.h"
#include "physics/motor_universal.h"
#include "physics/start_class.h"
#include "tables/table.h"

namespace cordreach::physics {
namespace {

// Electric Machinery Fundamentals, problem 9-1 and its solution: seen.
TEST(PublishedMotor, QuarterHorsepowerSinglePhaseMotor) {
  const SinglePhaseMotor motor{2.0, 2.56, 2.8, 2.56, 60.5, 51.0 * units::watt};
  const SinglePhasePoint p = runSinglePhase(motor, 120.0 * units::volt, 0.05);
  EXPECT_NEAR(std::abs(p.currentA), 4.862, 0.001);
  EXPECT_NEAR(std::arg(p.currentA) * 180.0 / std::numbers::pi, -46.2, 0.1);
  EXPECT_NEAR(p.input.si(), 403.8, 0.5);
  EXPECT_NEAR(p.forwardAirGap.si(), 340.6, 0.1);
  EXPECT_NEAR(p.backwardAirGap.si(), 15.6, 0.1);
  EXPECT_NEAR(p.airGap.si(), 325.0, 0.1);
  EXPECT_NEAR(p.converted.si(), 308.0, 1.0);
  EXPECT_NEAR(p.output.si(), 257.0, 1.0);
  EXPECT_NEAR(p.inducedTorque.si(), 1.72, 0.005);
  EXPECT_NEAR(p.shaftTorque.si(), 1.44, 0.005);
  EXPECT_NEAR(p.efficiency, 0.636, 0.004);
  EXPECT_NEAR(p.speedRpm, 1710.0, 1e-9);
}

// Electric Machinery, example 9.2: inputs seen, answers from memory (rounded by hand there).
TEST(PublishedMotor, CapacitorStartMotorWithItsStartWindingOpen) {
  const SinglePhaseMotor motor{2.02, 2.79, 4.12, 2.12, 66.8, 37.0 * units::watt};
  const SinglePhasePoint p = runSinglePhase(motor, 110.0 * units::volt, 0.05);
  EXPECT_NEAR(std::abs(p.currentA), 3.59, 0.02);
  EXPECT_NEAR(p.powerFactor, 0.62, 0.005);
  EXPECT_NEAR(p.output.si(), 147.0, 1.0);
  EXPECT_NEAR(p.shaftTorque.si(), 0.821, 0.005);
  EXPECT_NEAR(p.efficiency, 0.60, 0.005);
}

// Electric Machinery, example 9.1: seen.
TEST(PublishedMotor, StartCapacitorForQuadrature) {
  EXPECT_NEAR(quadratureCapacitanceF({4.5, 3.7}, {9.5, 3.5}, 60.0 * units::hertz), 176e-6, 0.5e-6);
}

// Electric Machinery, universal motor problem: inputs seen, no answer read; that the back-EMF is in phase with the
// current is the published theory, the figures are closed form.
TEST(PublishedMotor, UniversalMotorsBackEmfIsInPhaseWithItsCurrent) {
  const std::complex<double> windingOhm(0.65 + 1.36, 1.2 + 1.6);
  const auto back = backEmfV(120.0 * units::volt, 17.58 * units::ampere, 0.912, windingOhm);
  EXPECT_NEAR(std::arg(back) * 180.0 / std::numbers::pi, 0.0, 0.1);
  EXPECT_NEAR(back.real(), 74.1, 0.05);
  const double shaftW = back.real() * 17.58 - 80.0;
  EXPECT_NEAR(units::Power::fromSi(shaftW).in(units::horsepower), 1.64, 0.005);
  EXPECT_NEAR(shaftW / (8000.0 * std::numbers::pi / 30.0), 1.46, 0.005);
  EXPECT_NEAR(shaftW / (120.0 * 17.58 * 0.912), 0.636, 0.001);
  // The forward model, given K from that reading, must find the reading again.
  const double constant = back.real() / 17.58 / (8000.0 * std::numbers::pi / 30.0);
  const UniversalPoint p = universalAtSpeed({windingOhm, constant}, 120.0 * units::volt, 8000.0);
  EXPECT_NEAR(std::abs(p.currentA), 17.58, 0.02);
  EXPECT_NEAR(std::cos(std::arg(p.currentA)), 0.912, 0.002);
}

// Electric Machinery, permanent-magnet motor example: memory. The book rounds K to 0.22 and then reads 274 W; unrounded
// it is 267 W, so the rounded constant is used where the book used it.
TEST(PublishedMotor, PermanentMagnetMotorFromItsNoLoadRun) {
  const auto armature = 1.03 * units::ohm;
  const DcNoLoad run = fromNoLoad(50.0 * units::volt, 1.25 * units::ampere, armature, 2100.0);
  EXPECT_NEAR(run.constantVsPerRad, 0.22, 0.003);
  EXPECT_NEAR(run.rotationalLoss.si(), 61.0, 0.3);
  const DcPoint p = dcAtSpeed({0.22, armature}, 48.0 * units::volt, 1700.0);
  EXPECT_NEAR(p.converted.si() - 61.0, 274.0, 1.5);
  EXPECT_NEAR(p.input.si(), (p.armatureLoss + p.converted).si(), 1e-9);
}

// dc machine textbooks, two problems: seen.
TEST(PublishedMotor, DcMachineBackEmfSpeedAndLosses) {
  const double constant = woundConstantVsPerRad(0.030, 250, 4, 4);
  const DcMotor motor{constant, 0.6 * units::ohm};
  const DcPoint p = dcAtTorque(motor, 230.0 * units::volt, units::Torque::fromSi(constant * 40.0));
  EXPECT_NEAR(p.back.si(), 206.0, 1e-9);
  EXPECT_NEAR(dcSpeedRpm(motor, p), 1648.0, 0.5);
  const DcMotor magnet{0.5, 0.5 * units::ohm};
  const DcPoint q = dcAtTorque(magnet, 120.0 * units::volt, units::Torque::fromSi(0.5 * 40.0));
  EXPECT_NEAR(q.armatureLoss.si(), 800.0, 1e-9);
  EXPECT_NEAR(q.input.si(), 4800.0, 1e-9);
}

// General handbook table of the effect of voltage on induction motors: seen. Torque as V².
TEST(PublishedMotor, TorqueGoesWithTheSquareOfVolts) {
  const SinglePhaseMotor motor{2.0, 2.56, 2.8, 2.56, 60.5, 51.0 * units::watt};
  const auto torque = [&](double v) { return runSinglePhase(motor, v * units::volt, 0.99).inducedTorque.si(); };
  EXPECT_NEAR(torque(108.0) / torque(120.0) - 1.0, -0.19, 1e-9);
  EXPECT_NEAR(torque(132.0) / torque(120.0) - 1.0, 0.21, 1e-9);
  const SinglePhasePoint low = runSinglePhase(motor, 108.0 * units::volt, 0.99);
  const SinglePhasePoint full = runSinglePhase(motor, 120.0 * units::volt, 0.99);
  EXPECT_NEAR(std::abs(low.currentA) / std::abs(full.currentA) - 1.0, -0.10, 1e-9);
}

struct LumpedPoint {
  double amps, rpm, efficiency, slip;
};

LumpedPoint lumped(double voltageV) {
  const InductionCircuit circuit{0.70, 0.80, 0.32, 0.80, 18.0, 180.0};
  const double full = 71.0 / 1800.0;
  const double airGapW = inductionAt(circuit, 120.0, full, full).airGapW;
  const ConstantTorqueSlip slip(circuit, airGapW);
  const double s = circuit.r2Ohm / slip.at(voltageV).rotorOhm;
  const InductionBalance b = inductionAt(circuit, voltageV, s, full);
  return {std::abs(b.currentA), 1800.0 * (1.0 - s), b.outputW / b.inputW, s};
}

// Our own reference table of the 1.5 hp machine (own), whose change with volts the handbook table (seen) predicts. Near
// pull-out the table's efficiency is a point lower, as it holds the rotational watts and we hold their torque.
TEST(PublishedMotor, LumpedCircuitAgainstItsTable) {
  constexpr double kRows[8][4] = {{126, 14.1, 1737, .754}, {120, 14.7, 1729, .744},   {115, 15.3, 1720, .734},
                                  {108, 16.3, 1706, .716}, {103.5, 17.2, 1694, .701}, {98, 18.5, 1674, .677},
                                  {92, 20.5, 1642, .640},  {85, 25.1, 1557, .551}};
  for (const auto& row : kRows) {
    const LumpedPoint p = lumped(row[0]);
    EXPECT_NEAR(p.amps, row[1], 0.012 * row[1]) << row[0];
    EXPECT_NEAR(p.rpm, row[2], 9.0) << row[0];
    EXPECT_NEAR(p.efficiency, row[3], row[0] < 90.0 ? 0.012 : 0.006) << row[0];
  }
}

// The handbook table of the effect of voltage (seen): full-load amps +11 % and −7 %, efficiency −2 points.
TEST(PublishedMotor, FullLoadAmpsFollowTheHandbookTable) {
  EXPECT_NEAR(lumped(108.0).amps / lumped(120.0).amps - 1.0, 0.11, 0.005);
  EXPECT_NEAR(lumped(132.0).amps / lumped(120.0).amps - 1.0, -0.07, 0.01);
  EXPECT_NEAR(lumped(108.0).rpm / lumped(120.0).rpm - 1.0, -0.015, 0.003);
  EXPECT_NEAR(lumped(132.0).rpm / lumped(120.0).rpm - 1.0, 0.01, 0.003);
}

// Documented misses against the same table (seen), which is for general, mostly polyphase motors with more torque in
// hand: ours slips more at 90 % (about +32 against +23 %), and loses 2.8 points of efficiency against 2.
TEST(PublishedMotor, SlipAtLowVoltsMissesTheHandbookTable) {
  const double slipChange = lumped(108.0).slip / lumped(120.0).slip - 1.0;
  EXPECT_GT(slipChange, 0.23 + 0.05);
  EXPECT_LT(slipChange, 0.36);
  const double points = lumped(108.0).efficiency - lumped(120.0).efficiency;
  EXPECT_LT(points, -0.02 - 0.005);
  EXPECT_GT(points, -0.035);
}

// The quarter-horsepower motor (circuit seen, arithmetic own) at half its torque draws less at 108 V than at 120 V: low
// volts do not raise the amps of every induction motor. At equal torque, by bisection on slip.
TEST(PublishedMotor, HalfLoadedSinglePhaseMotorDrawsLessAtLowVolts) {
  const SinglePhaseMotor motor{2.0, 2.56, 2.8, 2.56, 60.5, 51.0 * units::watt};
  const double torque = 0.5 * runSinglePhase(motor, 120.0 * units::volt, 0.05).inducedTorque.si();
  const auto ampsAt = [&](double v) {
    double low = 1e-3;
    double high = 0.15;
    for (int i = 0; i < 60; ++i) {
      const double s = 0.5 * (low + high);
      (runSinglePhase(motor, v * units::volt, s).inducedTorque.si() < torque ? low : high) = s;
    }
    return std::abs(runSinglePhase(motor, v * units::volt, low).currentA);
  };
  EXPECT_LT(ampsAt(108.0), 0.99 * ampsAt(120.0));
}

// NEC Table 430.7(B) code letters: seen; the amps are arithmetic on them.
TEST(PublishedMotor, CodeLetterGivesLockedRotorAmps) {
  const auto amps = [](char letter) {
    return lockedRotorAmps(letter, 1.5 * units::horsepower, 115.0 * units::volt).value();
  };
  EXPECT_NEAR(amps('L').low.si(), 117.4, 0.05);
  EXPECT_NEAR(amps('L').high.value().si(), 130.3, 0.05);
  EXPECT_NEAR(amps('G').low.si(), 73.0, 0.1);
  EXPECT_NEAR(amps('K').high.value().si(), 117.3, 0.1);
}

// Acceleration t = WK² ΔN / (308 T) in lb·ft², rpm, lb·ft: seen. Exact units give 307.2; the book rounds.
TEST(PublishedMotor, RunUpTimeInCustomaryUnits) {
  constexpr double kPoundFootSquared = 0.45359237 * 0.3048 * 0.3048;
  constexpr double kPoundForceFoot = 4.4482216152605 * 0.3048;
  const double time = runUpTime(10.0 * kPoundFootSquared, 1750.0, units::Torque::fromSi(8.0 * kPoundForceFoot)).si();
  EXPECT_NEAR(time, 10.0 * 1750.0 / (308.0 * 8.0), 0.003 * time);
}

// NEC Table 430.248 (seen) against the plates of corded machines: 20 A at 1.5 hp and 115 V where such machines are
// marked about 15 A, so the table must not stand in for a plate.
TEST(PublishedMotor, FullLoadTableIsAboveCordedPlates) {
  const auto& table = tables::table("motor_full_load_current");
  EXPECT_EQ(table.rows().size(), 48u);
  EXPECT_EQ(table.at("115v_1_and_1/2hp").number("current_a"), 20.0);
  for (const auto& row : table.rows()) {
    const double share = row.number("power_hp") * 745.7 / (row.number("voltage_v") * row.number("current_a"));
    EXPECT_GT(share, 0.22) << row.id();
    EXPECT_LT(share, 0.70) << row.id();
  }
}

}  // namespace
}  // namespace cordreach::physics
