// SPDX-License-Identifier: GPL-3.0-or-later
// What a pad's friction asks of the motor: T = μ N r, P = T ω; r = (2/3)(R³ − a³)/(R² − a²) for even pressure between
// radii a and R (a = 0: 2R/3). Mechanics, closed form. No published friction of a pad on floor finish was found:
// μ is an input with a band (pad_friction.csv, own), to be set from an ammeter reading.
#pragma once

#include <string_view>

#include "base/result.h"
#include "units/quantity.h"

namespace cordreach::physics {

// Radius at which the whole friction may be thought to act. 0 ≤ inner < outer.
[[nodiscard]] units::Length effectivePadRadius(units::Length outer, units::Length inner = {});

// A driver cupped so that only the rim, the outer 30 % of the radius, presses (own choice).
inline constexpr double kCupInnerShare = 0.7;
[[nodiscard]] units::Length cuppedPadRadius(units::Length outer);

[[nodiscard]] units::Torque padTorque(double friction, units::Force pressure, units::Length effectiveRadius);
[[nodiscard]] units::Power padPower(units::Torque torque, double speedRpm);

struct PadFriction {
  double low = 0, likely = 0, high = 0;
};
// By the task's row in pad_friction.csv. Error: pad.unknown_task, place: the id.
[[nodiscard]] base::Result<PadFriction> padFriction(std::string_view task);

// Line amps (total rms) of a rectifier-fed dc machine: 1.11 (T + T_loss)/K.
struct PadMotor {
  double constantVsPerRad = 0.4592;                     // at the pad's shaft: own reference burnisher
  units::Torque lossTorque = 0.6 * units::newtonMetre;  // own reference burnisher
};
[[nodiscard]] units::Current burnisherAmps(const PadMotor& motor, units::Torque padTorque);
// The reverse: the pad's torque behind an ammeter reading.
[[nodiscard]] units::Torque torqueFromAmps(const PadMotor& motor, units::Current lineCurrent);

}  // namespace cordreach::physics
