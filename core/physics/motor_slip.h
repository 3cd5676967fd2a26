// SPDX-License-Identifier: GPL-3.0-or-later
// Running slip of an induction motor against volts: the equilibrium branch from no load down to pull-out.
// Both laws answer the rotor's a = R2/s and its derivative by volts for voltages above pull-out.
#pragma once

#include <vector>

#include "physics/motor_induction.h"

namespace cordreach::physics {

struct RotorPoint {
  double rotorOhm = 0;      // a = R2/s
  double slopeOhmPerV = 0;  // capped within 1e-10 of pull-out, where it grows without bound
};

// The load's torque times synchronous speed is the same at every speed.
class ConstantTorqueSlip {
 public:
  ConstantTorqueSlip(const InductionCircuit& circuit, double airGapW);

  [[nodiscard]] double pullOutV() const { return m_pullOutV; }
  [[nodiscard]] double pullOutRotorOhm() const { return m_breakdownOhm; }
  [[nodiscard]] RotorPoint at(double voltageV) const;

 private:
  double m_squareS = 0;  // k²/P
  double m_rOhm = 0;
  double m_breakdownOhm = 0;  // √(R² + X²)
  double m_pullOutV = 0;
};

struct FanTorque {
  double loadAirGapW = 0;  // at fullLoadSlip
  double lossAirGapW = 0;  // the same at every speed
  double fullLoadSlip = 0.04;
};

// Torque as the square of speed, tabulated once. `topV`: slip is held above it.
class FanSlip {
 public:
  FanSlip(const InductionCircuit& circuit, const FanTorque& torque, double topV);

  [[nodiscard]] double pullOutV() const { return m_pullOutV; }
  [[nodiscard]] double pullOutRotorOhm() const { return m_r2Ohm / m_nodes.front().slip; }
  [[nodiscard]] RotorPoint at(double voltageV) const;

  // The voltage at which the motor runs at that slip: what the table inverts.
  [[nodiscard]] double voltageAtSlip(double slip) const;

 private:
  struct Node {
    double slip, slopePerStep, curvePerStep2;
  };
  struct Balance {
    double squareV2;  // the volts at which the motor runs at a slip, squared
    double logSlope;  // d ln V² / d slip; zero at pull-out
    double logCurve;  // its slope
  };
  struct SlipPoint {
    double slip, slopePerStep;
  };
  [[nodiscard]] Balance balanceAt(double slip) const;
  [[nodiscard]] double findPullOutSlip() const;
  [[nodiscard]] Node firstNode(double pullOutSlip, double stepRoot) const;
  [[nodiscard]] Node nodeAt(double root, double guessedSlip) const;
  // `steps` beyond node `first`, by the quintic through it and the next.
  [[nodiscard]] SlipPoint between(std::size_t first, double steps) const;
  void fillNodes(double pullOutSlip);

  RotorView m_view;
  FanTorque m_torque;
  double m_r2Ohm = 0;
  double m_pullOutV = 0;
  double m_topV = 0;
  double m_stepsPerRoot = 0;  // steps per √V
  std::vector<Node> m_nodes;
};

}  // namespace cordreach::physics
