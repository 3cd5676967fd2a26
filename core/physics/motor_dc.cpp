// SPDX-License-Identifier: GPL-3.0-or-later
// Permanent-magnet dc motor.
#include "physics/motor_dc.h"

#include <numbers>

namespace cordreach::physics {
namespace {

constexpr double kRadPerSecondPerRpm = std::numbers::pi / 30.0;

DcPoint pointOf(const DcMotor& motor, units::Voltage voltage, units::Current current) {
  DcPoint point;
  point.current = current;
  point.back = voltage - current * motor.armature;
  point.input = voltage * current;
  point.armatureLoss = current * current * motor.armature;
  point.converted = point.back * current;
  point.torque = units::Torque::fromSi(motor.constantVsPerRad * current.si());
  return point;
}

}  // namespace

DcNoLoad fromNoLoad(units::Voltage voltage, units::Current current, units::Resistance armature, double speedRpm) {
  const units::Voltage back = voltage - current * armature;
  return {back.si() / (speedRpm * kRadPerSecondPerRpm), back * current};
}

DcPoint dcAtSpeed(const DcMotor& motor, units::Voltage voltage, double speedRpm) {
  const auto back = units::Voltage::fromSi(motor.constantVsPerRad * speedRpm * kRadPerSecondPerRpm);
  return pointOf(motor, voltage, (voltage - back) / motor.armature);
}

DcPoint dcAtTorque(const DcMotor& motor, units::Voltage voltage, units::Torque torque) {
  return pointOf(motor, voltage, units::Current::fromSi(torque.si() / motor.constantVsPerRad));
}

double dcSpeedRpm(const DcMotor& motor, const DcPoint& point) {
  return point.back.si() / motor.constantVsPerRad / kRadPerSecondPerRpm;
}

double woundConstantVsPerRad(double fluxWb, int conductors, int poles, int paths) {
  return fluxWb * conductors * poles / (2.0 * std::numbers::pi * paths);
}

}  // namespace cordreach::physics
