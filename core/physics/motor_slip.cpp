// SPDX-License-Identifier: GPL-3.0-or-later
// Slip equilibrium: closed for constant torque, tabulated for a fan.
#include "physics/motor_slip.h"

#include <algorithm>
#include <cmath>

#include "base/contract.h"

namespace cordreach::physics {
namespace {

constexpr double kNearestToPullOut = 1e-10;  // of pull-out volts
constexpr std::size_t kNodes = 257;
constexpr double kLeastSlip = 1e-9;
constexpr int kMostSteps = 60;
constexpr double kSlopeTolerance = 1e-10;  // of slip: below it a slope taken before the last step still holds

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

FanSlip::Balance FanSlip::balanceAt(double slip) const {
  const double perSlip = 1.0 / (1.0 - m_torque.fullLoadSlip);
  const double speed = (1.0 - slip) * perSlip;
  const double airGapW = m_torque.lossAirGapW + m_torque.loadAirGapW * speed * speed;
  const double loadSlope = -2.0 * m_torque.loadAirGapW * speed * perSlip / airGapW;
  const double loadCurve = 2.0 * m_torque.loadAirGapW * perSlip * perSlip / airGapW - loadSlope * loadSlope;
  const double a = m_r2Ohm / slip;
  const double sum = m_view.rOhm + a;
  const double impedance2 = sum * sum + m_view.xOhm * m_view.xOhm;
  const double share = sum * a / impedance2;
  const double motorSlope = (1.0 - 2.0 * share) / slip;
  const double shareSlope = (2.0 * share * share - (a * a + sum * a) / impedance2) / slip;
  const double motorCurve = -(2.0 * shareSlope + motorSlope) / slip;
  return {airGapW * impedance2 / (m_view.voltageRatio * m_view.voltageRatio * a), loadSlope + motorSlope,
          loadCurve + motorCurve};
}

double FanSlip::voltageAtSlip(double slip) const { return std::sqrt(balanceAt(slip).squareV2); }

// The smallest slip at which more slip needs more volts; 1 when it can be brought to standstill without pulling out.
double FanSlip::findPullOutSlip() const {
  constexpr int kScan = 200;
  double low = 1.0 / kScan;
  for (int i = 1; i <= kScan; ++i) {
    double high = static_cast<double>(i) / kScan;
    if (balanceAt(high).logSlope < 0.0) {
      low = high;
      continue;
    }
    if (i == 1) low = kLeastSlip;
    for (int j = 0; j < 60; ++j) {
      const double middle = 0.5 * (low + high);
      (balanceAt(middle).logSlope < 0.0 ? low : high) = middle;
    }
    return low;
  }
  return 1.0;
}

// Newton's method on V², kept between no load and pull-out. A guess from the nodes before leaves one or two steps.
FanSlip::Node FanSlip::nodeAt(double root, double guessedSlip) const {
  const double voltageV = m_pullOutV + root * root;
  const double wantedV2 = voltageV * voltageV;
  double low = kLeastSlip;
  double high = m_nodes.front().slip;
  double slip = std::clamp(guessedSlip, low, high);
  Balance balance = balanceAt(slip);
  for (int i = 0; i < kMostSteps; ++i) {
    (balance.squareV2 > wantedV2 ? low : high) = slip;
    double next = slip - (balance.squareV2 - wantedV2) / (balance.squareV2 * balance.logSlope);
    if (!(next > low && next < high)) next = 0.5 * (low + high);
    const double moved = std::abs(next - slip);
    slip = next;
    if (moved <= kSlopeTolerance * slip) break;
    balance = balanceAt(slip);
  }
  // V = V_pull-out + u² differentiated twice by u: V' s' = 2 u and V'' s'² + V' s'' = 2.
  const double perSlip = 0.5 * voltageV * balance.logSlope;
  const double perSlip2 = 0.5 * voltageV * (0.5 * balance.logSlope * balance.logSlope + balance.logCurve);
  const double slope = 2.0 * root / perSlip;
  const double step = 1.0 / m_stepsPerRoot;
  return {slip, slope * step, (2.0 - perSlip2 * slope * slope) / perSlip * step * step};
}

// At a fold V' is nil, so V'' s'² = 2, and a third differentiation gives s''; without a fold, at standstill, V' s''
// = 2.
FanSlip::Node FanSlip::firstNode(double pullOutSlip, double stepRoot) const {
  const Balance balance = balanceAt(pullOutSlip);
  if (pullOutSlip == 1.0) return {1.0, 0.0, 4.0 / (m_pullOutV * balance.logSlope) * stepRoot * stepRoot};
  const double width = 1e-5 * pullOutSlip;
  const double logThird = (balance.logCurve - balanceAt(pullOutSlip - width).logCurve) / width;
  const double slope = -std::sqrt(4.0 / (balance.logCurve * m_pullOutV));
  const double curve = -logThird * slope * slope / (3.0 * balance.logCurve);
  return {pullOutSlip, slope * stepRoot, curve * stepRoot * stepRoot};
}

void FanSlip::fillNodes(double pullOutSlip) {
  const double stepRoot = std::sqrt(m_topV - m_pullOutV) / static_cast<double>(kNodes - 1);
  m_stepsPerRoot = 1.0 / stepRoot;
  m_nodes.reserve(kNodes);
  m_nodes.push_back(firstNode(pullOutSlip, stepRoot));
  for (std::size_t i = 1; i < kNodes; ++i) {
    const double guess =
        i == 1 ? m_nodes[0].slip + m_nodes[0].slopePerStep + 0.5 * m_nodes[0].curvePerStep2 : between(i - 2, 2.0).slip;
    m_nodes.push_back(nodeAt(stepRoot * static_cast<double>(i), guess));
  }
}

FanSlip::SlipPoint FanSlip::between(std::size_t first, double steps) const {
  const Node& a = m_nodes[first];
  const Node& b = m_nodes[first + 1];
  const double t = steps;
  const double rise = b.slip - a.slip;
  const double c2 = 0.5 * a.curvePerStep2;
  const double half = 0.5 * b.curvePerStep2;
  const double c3 = 10.0 * rise - 6.0 * a.slopePerStep - 4.0 * b.slopePerStep - 3.0 * c2 + half;
  const double c4 = -15.0 * rise + 8.0 * a.slopePerStep + 7.0 * b.slopePerStep + 3.0 * c2 - 2.0 * half;
  const double c5 = 6.0 * rise - 3.0 * (a.slopePerStep + b.slopePerStep) - c2 + half;
  return {a.slip + t * (a.slopePerStep + t * (c2 + t * (c3 + t * (c4 + t * c5)))),
          a.slopePerStep + t * (2.0 * c2 + t * (3.0 * c3 + t * (4.0 * c4 + t * 5.0 * c5)))};
}

RotorPoint FanSlip::at(double voltageV) const {
  const bool held = voltageV >= m_topV;
  const double v = std::clamp(voltageV, m_pullOutV * (1.0 + kNearestToPullOut), m_topV);
  const double root = std::sqrt(v - m_pullOutV);
  const double position = std::min(root * m_stepsPerRoot, static_cast<double>(kNodes - 1));
  const auto i = std::min(static_cast<std::size_t>(position), kNodes - 2);
  const SlipPoint point = between(i, position - static_cast<double>(i));
  const double rotorOhm = m_r2Ohm / point.slip;
  const double slopePerV = point.slopePerStep * m_stepsPerRoot / (2.0 * root);
  return {rotorOhm, held ? 0.0 : -rotorOhm / point.slip * slopePerV};
}

}  // namespace cordreach::physics
