// SPDX-License-Identifier: GPL-3.0-or-later
// Universal (series) motor on alternating current: V = Ea + I (R + jX), with the back-EMF Ea in phase with I;
// unsaturated Ea = K I ω, T = K I². Source: the textbook Electric Machinery (inputs seen).
#pragma once

#include <complex>

#include "units/quantity.h"

namespace cordreach::physics {

struct UniversalMotor {
  std::complex<double> windingOhm;  // field and armature in series
  double constantVsPerRadA = 0;     // K
};

struct UniversalPoint {
  std::complex<double> currentA;  // against the volts
  units::Voltage back;
  units::Power converted;
  units::Torque torque;
};

// Back-EMF that a measured current and power factor leave: V − I Z, a phasor on the current; its angle is 0 in theory.
[[nodiscard]] std::complex<double> backEmfV(units::Voltage voltage, units::Current current, double laggingPowerFactor,
                                            std::complex<double> windingOhm);

[[nodiscard]] UniversalPoint universalAtSpeed(const UniversalMotor& motor, units::Voltage voltage, double speedRpm);

}  // namespace cordreach::physics
