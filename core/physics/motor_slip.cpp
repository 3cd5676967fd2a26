// SPDX-License-Identifier: GPL-3.0-or-later
// Slip equilibrium: closed for constant torque, tabulated for a fan.
#include "physics/motor_slip.h"

#include <algorithm>
#include <cmath>

#include "base/contract.h"

namespace cordreach::physics {
namespace {

constexpr double kNearestToPullOut = 1e-10;  // of pull-out volts
constexpr std::size_t kNodes = 1025;
constexpr double kLeastSlip = 1e-9;

}  // namespace

ConstantTorqueSlip::ConstantTorqueSlip(const InductionCircuit& circuit, double airGapW) {
  CORDREACH_EXPECTS(airGapW > 0.0);
  const RotorView view = rotorView(circuit);
  m_squareS = view.voltageRatio * view.voltageRatio / airGapW;
  m_rOhm = view.rOhm;
  m_breakdownOhm = std::hypot(view.rOhm, view.xOhm);
  m_pullOutV = std::sqrt(2.0 * (m_rOhm + m_breakdownOhm) / m_squareS);
}

RotorPoint ConstantTorqueSlip::at(double voltageV) const {
  const double v = std::max(voltageV, m_pullOutV * (1.0 + kNearestToPullOut));
  // The discriminant as a product, so that nothing cancels near pull-out.
  const double above = m_squareS * (v - m_pullOutV) * (v + m_pullOutV);
  const double root = std::sqrt(above * (above + 4.0 * m_breakdownOhm));
  const double rotorOhm = m_breakdownOhm + 0.5 * (above + root);
  return {rotorOhm, rotorOhm / root * 2.0 * m_squareS * v};
}

FanSlip::FanSlip(const InductionCircuit& circuit, const FanTorque& torque, double topV)
    : m_view(rotorView(circuit)), m_torque(torque), m_r2Ohm(circuit.r2Ohm), m_topV(topV) {
  const double pullOutSlip = findPullOutSlip();
  m_pullOutV = voltageAtSlip(pullOutSlip);
  CORDREACH_EXPECTS(m_pullOutV < topV);
  fillNodes(pullOutSlip);
}

double FanSlip::voltageAtSlip(double slip) const {
  const double speed = (1.0 - slip) / (1.0 - m_torque.fullLoadSlip);
  const double airGapW = m_torque.lossAirGapW + m_torque.loadAirGapW * speed * speed;
  return std::sqrt(airGapW / m_view.airGapWPerV2(m_r2Ohm / slip));
}

double FanSlip::logSlope(double slip) const {
  const double full = 1.0 - m_torque.fullLoadSlip;
  const double speed = (1.0 - slip) / full;
  const double airGapW = m_torque.lossAirGapW + m_torque.loadAirGapW * speed * speed;
  const double loadPart = -2.0 * m_torque.loadAirGapW * speed / full / airGapW;
  const double a = m_r2Ohm / slip;
  const double sum = m_view.rOhm + a;
  const double motorPart = (1.0 / a - 2.0 * sum / (sum * sum + m_view.xOhm * m_view.xOhm)) * a / slip;
  return loadPart + motorPart;
}

// The smallest slip at which more slip needs more volts; 1 when it can be brought to standstill without pulling out.
double FanSlip::findPullOutSlip() const {
  constexpr int kScan = 1000;
  double low = 1.0 / kScan;
  for (int i = 1; i <= kScan; ++i) {
    double high = static_cast<double>(i) / kScan;
    if (logSlope(high) < 0.0) {
      low = high;
      continue;
    }
    if (i == 1) low = kLeastSlip;
    for (int j = 0; j < 60; ++j) {
      const double middle = 0.5 * (low + high);
      (logSlope(middle) < 0.0 ? low : high) = middle;
    }
    return low;
  }
  return 1.0;
}

double FanSlip::slipAtVoltage(double voltageV, double pullOutSlip) const {
  double low = kLeastSlip;
  double high = pullOutSlip;
  for (int i = 0; i < 60 && high - low > 1e-16; ++i) {
    const double middle = 0.5 * (low + high);
    (voltageAtSlip(middle) > voltageV ? low : high) = middle;
  }
  return 0.5 * (low + high);
}

void FanSlip::fillNodes(double pullOutSlip) {
  const double stepRoot = std::sqrt(m_topV - m_pullOutV) / static_cast<double>(kNodes - 1);
  m_stepsPerRoot = 1.0 / stepRoot;
  m_nodes.reserve(kNodes);
  // At a fold V − V_pull-out = ½ V'' (s − s*)², so s falls by √(2/V'') per u; without one s has no slope in u there.
  const double width = 1e-5 * pullOutSlip;
  const double curve = (logSlope(pullOutSlip) - logSlope(pullOutSlip - width)) / width;
  const bool fold = pullOutSlip < 1.0;
  const double atFold = fold ? -std::sqrt(4.0 / (curve * m_pullOutV)) : 0.0;
  m_nodes.push_back({pullOutSlip, atFold * stepRoot});
  for (std::size_t i = 1; i < kNodes; ++i) {
    const double u = stepRoot * static_cast<double>(i);
    const double voltageV = m_pullOutV + u * u;
    const double slip = slipAtVoltage(voltageV, pullOutSlip);
    const double voltsPerSlip = 0.5 * voltageV * logSlope(slip);
    m_nodes.push_back({slip, 2.0 * u / voltsPerSlip * stepRoot});
  }
}

RotorPoint FanSlip::at(double voltageV) const {
  const bool held = voltageV >= m_topV;
  const double v = std::clamp(voltageV, m_pullOutV * (1.0 + kNearestToPullOut), m_topV);
  const double root = std::sqrt(v - m_pullOutV);
  const double position = std::min(root * m_stepsPerRoot, static_cast<double>(kNodes - 1));
  const auto i = std::min(static_cast<std::size_t>(position), kNodes - 2);
  const double t = position - static_cast<double>(i);
  const Node& a = m_nodes[i];
  const Node& b = m_nodes[i + 1];
  const double rise = b.slip - a.slip;
  const double c2 = 3.0 * rise - 2.0 * a.slopePerStep - b.slopePerStep;
  const double c3 = a.slopePerStep + b.slopePerStep - 2.0 * rise;
  const double slip = a.slip + t * (a.slopePerStep + t * (c2 + t * c3));
  const double slipSlope = (a.slopePerStep + t * (2.0 * c2 + 3.0 * t * c3)) * m_stepsPerRoot / (2.0 * root);
  const double rotorOhm = m_r2Ohm / slip;
  return {rotorOhm, held ? 0.0 : -rotorOhm / slip * slipSlope};
}

}  // namespace cordreach::physics
