// SPDX-License-Identifier: GPL-3.0-or-later
// An induction motor as a load: the slip at which the fitted circuit's torque meets the load's, from the no-load side.
// Constant torque has a closed form: a = R2/s solves a² + (2R − (kV)²/P) a + R² + X² = 0. A fan's torque, which goes as
// the square of speed, is tabulated over u = √(V − V_pull-out), where slip is smooth, with quintic Hermite pieces.
// Valid to three times plate volts (a fan's slip is held above). Below pull-out: pull-out's admittance, no running
// point.
#pragma once

#include <memory>
#include <optional>

#include "physics/load_law.h"
#include "physics/load_model.h"
#include "physics/motor_induction.h"

namespace cordreach::physics {

enum class ShaftLoad { ConstantTorque, Fan };

struct InductionLoad {
  InductionFit fit;
  double plateV = 0;
  double fullLoadSlip = 0.04;
  ShaftLoad shaft = ShaftLoad::ConstantTorque;
  double torqueFactor = 1.0;             // of the plate's shaft torque
  std::optional<double> fullLoadRpm{};   // of what turns, at full-load slip
  std::optional<double> lockedRotorA{};  // at plate volts, power factor 0.7; none: the circuit at standstill
  Distortion distortion{};
};

inline constexpr double kLockedRotorPowerFactor = 0.7;  // memory: small single-phase motors 0.6 to 0.8

[[nodiscard]] std::shared_ptr<const LoadLaw> makeInductionLaw(const InductionLoad& load);

}  // namespace cordreach::physics
