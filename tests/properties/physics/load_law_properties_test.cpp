// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold for the law of any plate.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "core/physics/load_test_support.h"
#include "physics/load_induction.h"
#include "physics/motor_slip.h"

namespace cordreach::physics {
namespace {

double within(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 1000001) / 1e6; }

Nameplate anyPlate() {
  Nameplate plate;
  plate.model = static_cast<LoadModel>(*rc::gen::inRange(0, static_cast<int>(LoadModel::Copier) + 1));
  plate.voltage = *rc::gen::element(115.0, 120.0, 208.0, 230.0) * units::volt;
  plate.current = within(0.2, 20.0) * units::ampere;
  plate.torqueFactor = within(0.2, 1.6);
  if (*rc::gen::arbitrary<bool>()) {
    plate.shaftPower = within(0.30, 0.80) * plate.voltage.si() * plate.current.si() * units::watt;
  }
  if (*rc::gen::arbitrary<bool>()) plate.speedRpm = within(100.0, 3000.0);
  return plate;
}

bool isFinite(const LoadPoint& p) {
  return std::isfinite(p.admittanceS.real()) && std::isfinite(p.admittanceS.imag()) &&
         std::isfinite(p.admittanceSlopeSPerV.real()) && std::isfinite(p.admittanceSlopeSPerV.imag()) &&
         std::isfinite(p.distortionA) && std::isfinite(p.thirdHarmonicA) && std::isfinite(p.speedRpm.value_or(0.0));
}

RC_GTEST_PROP(LoadLaw, IsFiniteEverywhereAndDrawsNothingAtZeroVolts, ()) {
  const auto law = lawOf(anyPlate());
  for (double v = 0.0; v < 1000.0; v += within(0.05, 5.0)) {
    const LoadPoint p = law->at(v);
    RC_ASSERT(isFinite(p));
    RC_ASSERT(isFinite(law->stalledAt(v)));
    RC_ASSERT(p.admittanceS.real() > 0.0);
    RC_ASSERT(p.thirdHarmonicA <= p.distortionA);
    RC_ASSERT(p.hasRunningPoint == (v > law->pullOutVoltageV() || law->pullOutVoltageV() == 0.0));
  }
  RC_ASSERT(totalA(*law, 0.0) == 0.0);
}

RC_GTEST_PROP(LoadLaw, CurrentIsContinuous, ()) {
  const auto law = lawOf(anyPlate());
  // Near pull-out the current goes as a square root, so the step allowed is one of a root of the voltage step.
  for (double v = 0.0; v < 300.0; v += within(0.02, 1.0)) {
    const double scale = totalA(*law, 120.0) + totalA(*law, v);
    RC_ASSERT(std::abs(totalA(*law, v + 1e-8) - totalA(*law, v)) < 1e-3 * scale);
  }
  const double edge = law->pullOutVoltageV();
  RC_ASSERT(std::abs(totalA(*law, edge * (1.0 + 1e-9)) - totalA(*law, edge)) < 1e-3 * totalA(*law, edge) + 1e-12);
}

RC_GTEST_PROP(LoadLaw, SlopeIsTheFiniteDifference, ()) {
  const auto law = lawOf(anyPlate());
  const double v = within(5.0, 300.0);
  const double h = 1e-4;
  RC_PRE(std::abs(v - law->pullOutVoltageV()) > 0.5);
  const LoadPoint p = law->at(v);
  const auto below = (p.admittanceS - law->at(v - h).admittanceS) / h;
  const auto above = (law->at(v + h).admittanceS - p.admittanceS) / h;
  // On either side of an edge of validity one of the two differences holds.
  const double tolerance = 2e-3 * std::abs(p.admittanceSlopeSPerV) + 1e-6 * std::abs(p.admittanceS);
  RC_ASSERT(std::min(std::abs(below - p.admittanceSlopeSPerV), std::abs(above - p.admittanceSlopeSPerV)) < tolerance);
}

RC_GTEST_PROP(LoadLaw, PlateAmpsAreDrawnAtPlateVolts, ()) {
  Nameplate plate = anyPlate();
  plate.torqueFactor = 1.0;
  RC_ASSERT(std::abs(totalA(*lawOf(plate), plate.voltage.si()) / plate.current.si() - 1.0) < 1e-6);
}

RC_GTEST_PROP(LoadLaw, DistortionAddsNoPower, ()) {
  const auto law = lawOf(anyPlate());
  const double v = within(1.0, 250.0);
  RC_ASSERT(inputW(*law, v) <= v * totalA(*law, v) * (1.0 + 1e-12));
}

InductionFit anyFit(double voltageV) {
  InductionPlate plate;
  plate.voltageV = voltageV;
  plate.currentA = within(1.0, 20.0);
  plate.powerFactor = within(0.6, 0.9);
  plate.efficiency = within(0.5, 0.8);
  const auto fit = fitInduction(plate);
  RC_PRE(fit.ok());
  return fit.value();
}

RC_GTEST_PROP(InductionCircuit, PowerInIsPowerOutAndLosses, ()) {
  const InductionFit fit = anyFit(115.0);
  const InductionBalance b = inductionAt(fit.circuit, within(50.0, 140.0), within(0.001, 1.0), 0.04);
  const double out = b.outputW + b.statorLossW + b.rotorLossW + b.rotationalLossW;
  RC_ASSERT(std::abs(out - b.inputW) < 1e-9 * b.inputW);
}

RC_GTEST_PROP(InductionCircuit, PullOutVoltsGoWithTheRootOfTorque, ()) {
  const InductionFit fit = anyFit(115.0);
  const double torque = within(100.0, 2000.0);
  const double factor = within(0.3, 3.0);
  const double one = ConstantTorqueSlip(fit.circuit, torque).pullOutV();
  const double other = ConstantTorqueSlip(fit.circuit, factor * torque).pullOutV();
  RC_ASSERT(std::abs(other / one - std::sqrt(factor)) < 1e-12);
}

RC_GTEST_PROP(InductionCircuit, LowVoltsNeverMakeAMotorTurnFaster, ()) {
  Nameplate plate = anyPlate();
  plate.model = *rc::gen::element(LoadModel::Induction, LoadModel::InductionFan, LoadModel::RectifiedDc);
  plate.speedRpm = 1700.0;
  const auto law = lawOf(plate);
  const double v = within(1.0, 250.0);
  RC_ASSERT(law->at(v).speedRpm.value() <= law->at(v * 1.01).speedRpm.value());
}

}  // namespace
}  // namespace cordreach::physics
