// SPDX-License-Identifier: GPL-3.0-or-later
// Fitting the lumped circuit: with X1 = X2 = X given, the plate leaves one circuit; X is then found by the breakdown
// torque, which falls as X grows.
#include "physics/motor_induction.h"

#include <cmath>
#include <optional>

namespace cordreach::physics {
namespace {

using Complex = std::complex<double>;

constexpr double kRotationalShare = 0.468;  // own reference machine: 180 W of 384 W

struct PlatePowers {
  double airGapW, rotationalW, r1Ohm;
};

PlatePowers powersOf(const InductionPlate& plate) {
  const double inputW = plate.voltageV * plate.currentA * plate.powerFactor;
  const double outputW = inputW * plate.efficiency;
  const double rotationalW = kRotationalShare * (inputW - outputW);
  const double airGapW = (outputW + rotationalW) / (1.0 - plate.fullLoadSlip);
  return {airGapW, rotationalW, (inputW - airGapW) / (plate.currentA * plate.currentA)};
}

// The circuit that has the plate's amps and powers when both leakage reactances are X; none when X is too large.
std::optional<InductionCircuit> circuitFor(const InductionPlate& plate, const PlatePowers& powers, double x) {
  const Complex input = Complex(plate.powerFactor, std::sqrt(1.0 - plate.powerFactor * plate.powerFactor)) *
                        (plate.voltageV / plate.currentA);
  const Complex y = 1.0 / (input - Complex(powers.r1Ohm, x));
  const double g = y.real();
  const double discriminant = 1.0 - 4.0 * g * g * x * x;
  if (!(g > 0.0) || discriminant < 0.0) return std::nullopt;
  const double rotorOhm = (1.0 + std::sqrt(discriminant)) / (2.0 * g);
  const double magnetizingS = -y.imag() - x / (rotorOhm * rotorOhm + x * x);
  if (!(magnetizingS > 0.0)) return std::nullopt;
  return InductionCircuit{powers.r1Ohm, x, rotorOhm * plate.fullLoadSlip, x, 1.0 / magnetizingS, powers.rotationalW};
}

double breakdownRatio(const InductionCircuit& circuit, const InductionPlate& plate, const PlatePowers& powers) {
  const double lossW = powers.rotationalW / (1.0 - plate.fullLoadSlip);
  const double mostW = rotorView(circuit).breakdownWPerV2() * plate.voltageV * plate.voltageV;
  return (mostW - lossW) / (powers.airGapW - lossW);
}

// The largest X that still reaches the wanted breakdown torque; none when even the smallest does not.
std::optional<InductionCircuit> matchBreakdown(const InductionPlate& plate, const PlatePowers& powers) {
  const double base = plate.voltageV / plate.currentA;
  double low = 0.0;
  double high = 1e-4 * base;
  std::optional<InductionCircuit> best;
  for (; high < base; high *= 1.05) {
    const auto circuit = circuitFor(plate, powers, high);
    if (!circuit || breakdownRatio(*circuit, plate, powers) < plate.breakdownRatio) break;
    best = circuit;
    low = high;
  }
  if (!best) return std::nullopt;
  for (int i = 0; i < 60; ++i) {
    const double middle = 0.5 * (low + high);
    const auto circuit = circuitFor(plate, powers, middle);
    const bool reaches = circuit && breakdownRatio(*circuit, plate, powers) >= plate.breakdownRatio;
    if (reaches) best = circuit;
    (reaches ? low : high) = middle;
  }
  return best;
}

}  // namespace

double RotorView::breakdownWPerV2() const { return airGapWPerV2(std::hypot(rOhm, xOhm)); }

RotorView rotorView(const InductionCircuit& c) {
  const Complex sum(c.r1Ohm, c.x1Ohm + c.xmOhm);
  const Complex source = Complex(0.0, c.xmOhm) * Complex(c.r1Ohm, c.x1Ohm) / sum;
  return {c.xmOhm / std::abs(sum), source.real(), source.imag() + c.x2Ohm};
}

AdmittanceOfRotor admittanceOfRotor(const InductionCircuit& c) {
  const double x22 = c.x2Ohm + c.xmOhm;
  return {Complex(c.r1Ohm, c.x1Ohm + c.xmOhm), Complex(c.r1Ohm, c.x1Ohm) * Complex(0.0, x22) - c.xmOhm * c.x2Ohm, x22};
}

base::Result<InductionFit> fitInduction(const InductionPlate& plate) {
  const base::Error noCircuit{"load.no_circuit", "", {{"efficiency_ratio", plate.efficiency}}};
  const bool sane = plate.voltageV > 0.0 && plate.currentA > 0.0 && plate.powerFactor > 0.0 &&
                    plate.powerFactor < 1.0 && plate.efficiency > 0.0 && plate.efficiency < 1.0;
  if (!sane) return noCircuit;
  const PlatePowers powers = powersOf(plate);
  if (!(powers.r1Ohm > 0.0)) return noCircuit;
  const auto circuit = matchBreakdown(plate, powers);
  if (!circuit) return noCircuit;
  const double lossW = powers.rotationalW / (1.0 - plate.fullLoadSlip);
  return InductionFit{*circuit, powers.airGapW - lossW, lossW};
}

InductionBalance inductionAt(const InductionCircuit& c, double voltageV, double slip, double fullLoadSlip) {
  InductionBalance balance;
  const Complex rotor(c.r2Ohm / slip, c.x2Ohm);
  const Complex magnetizing(0.0, c.xmOhm);
  balance.currentA = voltageV / (Complex(c.r1Ohm, c.x1Ohm) + rotor * magnetizing / (rotor + magnetizing));
  const double rotorA = std::abs(balance.currentA * magnetizing / (rotor + magnetizing));
  balance.inputW = voltageV * balance.currentA.real();
  balance.statorLossW = std::norm(balance.currentA) * c.r1Ohm;
  balance.airGapW = rotorA * rotorA * rotor.real();
  balance.rotorLossW = rotorA * rotorA * c.r2Ohm;
  balance.rotationalLossW = c.rotationalW * (1.0 - slip) / (1.0 - fullLoadSlip);
  balance.outputW = (1.0 - slip) * balance.airGapW - balance.rotationalLossW;
  return balance;
}

}  // namespace cordreach::physics
