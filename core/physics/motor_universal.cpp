// SPDX-License-Identifier: GPL-3.0-or-later
// Universal motor.
#include "physics/motor_universal.h"

#include <cmath>
#include <numbers>

namespace cordreach::physics {

std::complex<double> backEmfV(units::Voltage voltage, units::Current current, double laggingPowerFactor,
                              std::complex<double> windingOhm) {
  const std::complex<double> against(laggingPowerFactor, std::sqrt(1.0 - laggingPowerFactor * laggingPowerFactor));
  return voltage.si() * against - current.si() * windingOhm;
}

UniversalPoint universalAtSpeed(const UniversalMotor& motor, units::Voltage voltage, double speedRpm) {
  // Unsaturated, the back-EMF acts as a resistance K ω.
  const double motionOhm = motor.constantVsPerRadA * speedRpm * std::numbers::pi / 30.0;
  UniversalPoint point;
  point.currentA = voltage.si() / (motor.windingOhm + motionOhm);
  const double square = std::norm(point.currentA);
  point.back = units::Voltage::fromSi(std::sqrt(square) * motionOhm);
  point.converted = units::Power::fromSi(square * motionOhm);
  point.torque = units::Torque::fromSi(square * motor.constantVsPerRadA);
  return point;
}

}  // namespace cordreach::physics
