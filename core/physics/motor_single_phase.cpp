// SPDX-License-Identifier: GPL-3.0-or-later
// Double revolving field.
#include "physics/motor_single_phase.h"

#include <cmath>
#include <numbers>

#include "base/contract.h"

namespace cordreach::physics {
namespace {

using Complex = std::complex<double>;

Complex fieldImpedance(const SinglePhaseMotor& m, double slip) {
  const Complex rotor(m.r2Ohm / slip, m.x2Ohm);
  const Complex magnetizing(0.0, m.xmOhm);
  return rotor * magnetizing / (rotor + magnetizing);
}

}  // namespace

double synchronousRpm(units::Frequency frequency, int poles) { return 120.0 * frequency.si() / poles; }

SinglePhasePoint runSinglePhase(const SinglePhaseMotor& m, units::Voltage voltage, double slip) {
  CORDREACH_EXPECTS(slip > 0.0 && slip < 2.0 && m.poles >= 2);
  const Complex forward = fieldImpedance(m, slip);
  const Complex backward = fieldImpedance(m, 2.0 - slip);
  SinglePhasePoint point;
  point.currentA = voltage.si() / (Complex(m.r1Ohm, m.x1Ohm) + 0.5 * forward + 0.5 * backward);
  const double square = std::norm(point.currentA);
  point.input = units::Power::fromSi(voltage.si() * point.currentA.real());
  point.forwardAirGap = units::Power::fromSi(0.5 * square * forward.real());
  point.backwardAirGap = units::Power::fromSi(0.5 * square * backward.real());
  point.airGap = point.forwardAirGap - point.backwardAirGap;
  point.converted = point.airGap * (1.0 - slip);
  point.output = point.converted - m.rotationalLoss;
  point.statorLoss = units::Power::fromSi(square * m.r1Ohm);
  point.rotorLoss = point.forwardAirGap * slip + point.backwardAirGap * (2.0 - slip);
  const double synchronous = synchronousRpm(m.frequency, m.poles);
  point.speedRpm = synchronous * (1.0 - slip);
  constexpr double kRadPerSecondPerRpm = std::numbers::pi / 30.0;
  point.inducedTorque = units::Torque::fromSi(point.airGap.si() / (synchronous * kRadPerSecondPerRpm));
  point.shaftTorque = units::Torque::fromSi(point.output.si() / (point.speedRpm * kRadPerSecondPerRpm));
  point.powerFactor = point.currentA.real() / std::abs(point.currentA);
  point.efficiency = point.output / point.input;
  return point;
}

}  // namespace cordreach::physics
