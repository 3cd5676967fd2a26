// SPDX-License-Identifier: GPL-3.0-or-later
// The lumped one-phase circuit of a running induction motor: R1 + jX1 in series with jXm parallel to R2/s + jX2, fitted
// to a nameplate. Air-gap power Pag = I2² R2/s is torque times synchronous speed.
// Fit: amps, power factor and efficiency from the plate; slip 4 %; breakdown 2.2 times the shaft torque (memory:
// capacitor-start 200 to 250 %); X1 = X2; rotational loss 0.468 of all losses (our own reference machine of 1.5 hp,
// 120 V, 15 A: R1 0.70, X1 = X2 0.80, R2 0.32, Xm 18.0 ohm, 180 W). Valid while it runs on one winding.
#pragma once

#include <complex>

#include "base/result.h"

namespace cordreach::physics {

struct InductionCircuit {
  double r1Ohm = 0, x1Ohm = 0, r2Ohm = 0, x2Ohm = 0, xmOhm = 0;
  double rotationalW = 0;  // at fullLoadSlip; its torque is taken as constant
};

struct InductionPlate {
  double voltageV = 0;
  double currentA = 0;  // fundamental
  double powerFactor = 0;
  double efficiency = 0;
  double fullLoadSlip = 0.04;
  double breakdownRatio = 2.2;  // shaft torque
};

struct InductionFit {
  InductionCircuit circuit;
  double loadAirGapW = 0;  // shaft torque of the plate times synchronous speed
  double lossAirGapW = 0;  // torque of the rotational loss times synchronous speed
};

// Error: load.no_circuit when no circuit of this form has that plate; argument: efficiency_ratio.
[[nodiscard]] base::Result<InductionFit> fitInduction(const InductionPlate& plate);

// What the circuit does at a slip, in watts; input = output + losses.
struct InductionBalance {
  std::complex<double> currentA;
  double inputW = 0;
  double airGapW = 0;
  double outputW = 0;  // at the shaft, rotational loss taken off at its constant torque
  double statorLossW = 0, rotorLossW = 0, rotationalLossW = 0;
};
[[nodiscard]] InductionBalance inductionAt(const InductionCircuit& circuit, double voltageV, double slip,
                                           double fullLoadSlip);

// The circuit seen from the rotor: a source behind R + jX, so Pag = (k V)² a / ((R + a)² + X²), a = R2/s.
struct RotorView {
  double voltageRatio = 0;    // k
  double rOhm = 0, xOhm = 0;  // X with the rotor's own

  [[nodiscard]] double airGapWPerV2(double rotorOhm) const {
    const double sum = rOhm + rotorOhm;
    return voltageRatio * voltageRatio * rotorOhm / (sum * sum + xOhm * xOhm);
  }
  // The largest over all slips, per volt squared.
  [[nodiscard]] double breakdownWPerV2() const;
};
[[nodiscard]] RotorView rotorView(const InductionCircuit& circuit);

// Input admittance as a fraction of lines in a = R2/s: (a + jX22) / (alpha a + beta).
struct AdmittanceOfRotor {
  std::complex<double> alpha, beta;
  double x22Ohm = 0;

  [[nodiscard]] std::complex<double> at(double rotorOhm) const {
    return std::complex<double>(rotorOhm, x22Ohm) / (alpha * rotorOhm + beta);
  }
  [[nodiscard]] std::complex<double> slopeAt(double rotorOhm) const {
    const std::complex<double> denominator = alpha * rotorOhm + beta;
    return (beta - std::complex<double>(0.0, x22Ohm) * alpha) / (denominator * denominator);
  }
};
[[nodiscard]] AdmittanceOfRotor admittanceOfRotor(const InductionCircuit& circuit);

}  // namespace cordreach::physics
