// SPDX-License-Identifier: GPL-3.0-or-later
// Permanent-magnet dc motor: E = K ω, V = E + I R, T = K I. Wave- and lap-wound machines: K from pole flux and
// conductors, E = Φ Z n P / (60 A). Steady state, constant flux; source: dc machine textbooks (seen).
#pragma once

#include "units/quantity.h"

namespace cordreach::physics {

struct DcMotor {
  double constantVsPerRad = 0;  // K; also newton metres per ampere
  units::Resistance armature;
};

struct DcPoint {
  units::Voltage back;
  units::Current current;
  units::Power input, armatureLoss, converted;
  units::Torque torque;
};

// K and the rotational loss from a no-load run.
struct DcNoLoad {
  double constantVsPerRad = 0;
  units::Power rotationalLoss;
};
[[nodiscard]] DcNoLoad fromNoLoad(units::Voltage voltage, units::Current current, units::Resistance armature,
                                  double speedRpm);

[[nodiscard]] DcPoint dcAtSpeed(const DcMotor& motor, units::Voltage voltage, double speedRpm);
// The amps carry the torque, whatever the volts.
[[nodiscard]] DcPoint dcAtTorque(const DcMotor& motor, units::Voltage voltage, units::Torque torque);
[[nodiscard]] double dcSpeedRpm(const DcMotor& motor, const DcPoint& point);

// K of a wound armature: flux per pole in weber, active conductors, poles and parallel paths.
[[nodiscard]] double woundConstantVsPerRad(double fluxWb, int conductors, int poles, int paths);

}  // namespace cordreach::physics
