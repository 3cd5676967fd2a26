// SPDX-License-Identifier: GPL-3.0-or-later
// A single-phase induction motor on its main winding alone, by the double revolving field:
//   Zf = (R2/s + jX2) ∥ jXm, Zb = (R2/(2−s) + jX2) ∥ jXm, I = V / (R1 + jX1 + Zf/2 + Zb/2),
//   Pag = I² (Rf − Rb)/2, Pconv = (1−s) Pag, T = Pag/ω_s.
// Valid for 0 < s < 2, unsaturated. Source: the textbooks Electric Machinery Fundamentals and Electric Machinery
// (seen).
#pragma once

#include <complex>

#include "units/quantity.h"

namespace cordreach::physics {

struct SinglePhaseMotor {
  double r1Ohm = 0, x1Ohm = 0, r2Ohm = 0, x2Ohm = 0, xmOhm = 0;  // whole-winding values, not halves
  units::Power rotationalLoss;                                   // friction, windage and iron together
  units::Frequency frequency = 60.0 * units::hertz;
  int poles = 4;
};

struct SinglePhasePoint {
  std::complex<double> currentA;
  units::Power input;
  units::Power forwardAirGap, backwardAirGap, airGap;
  units::Power converted, output;
  units::Power statorLoss, rotorLoss;  // rotor: forward and backward cages
  units::Torque inducedTorque, shaftTorque;
  double speedRpm = 0;
  double powerFactor = 0;
  double efficiency = 0;
};

[[nodiscard]] double synchronousRpm(units::Frequency frequency, int poles);

[[nodiscard]] SinglePhasePoint runSinglePhase(const SinglePhaseMotor& motor, units::Voltage voltage, double slip);

}  // namespace cordreach::physics
