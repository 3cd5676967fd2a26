// SPDX-License-Identifier: GPL-3.0-or-later
// The ladder in time. Method: the two-stage L-stable Rosenbrock method of Verwer et al. (ROS2), gamma = 1 - 1/sqrt(2):
//   (1 - gamma h J) k1 = f(y);   (1 - gamma h J) k2 = f(y + h k1) - 2 k1;   y' = y + h (3 k1 + k2) / 2
// of second order with any J, so that the frozen slope of the surface's loss costs stability nothing and order nothing.
// The first-order result y + h k1 inside it bounds the error, which steers the step.
#include <algorithm>
#include <cmath>
#include <optional>

#include <Eigen/Dense>

#include "base/contract.h"
#include "physics/cord_ladder.h"

namespace cordreach::physics {
namespace {

constexpr double kReferenceC = 20.0;
constexpr double kSmallestStepS = 1e-4;
constexpr double kLargestStepS = 600.0;
constexpr double kFirstStepS = 5.0;     // after every change of current
constexpr double kLargestRiseK = 15.0;  // of any node in a step: keeps the loss's slope honest

using Vector = Eigen::Vector3d;

Vector rates(const CordLadder& l, const Vector& nodesC, double source20, double lossWPerM) {
  const double made = source20 * (1.0 + l.alphaPerK * (nodesC[0] - kReferenceC));
  const double flow01 = (nodesC[0] - nodesC[1]) / l.resistance01;
  const double flow12 = (nodesC[1] - nodesC[2]) / l.resistance12;
  return {(l.sourceShare * made - flow01) / l.capacityJPerMK[0], (flow01 - flow12) / l.capacityJPerMK[1],
          ((1.0 - l.sourceShare) * made + flow12 - lossWPerM) / l.capacityJPerMK[2]};
}

Eigen::Matrix3d slopes(const CordLadder& l, double source20, double lossSlope) {
  const double feedback = source20 * l.alphaPerK;
  const double g01 = 1.0 / l.resistance01;
  const double g12 = 1.0 / l.resistance12;
  Eigen::Matrix3d j;
  j << (l.sourceShare * feedback - g01) / l.capacityJPerMK[0], g01 / l.capacityJPerMK[0], 0.0,   //
      g01 / l.capacityJPerMK[1], -(g01 + g12) / l.capacityJPerMK[1], g12 / l.capacityJPerMK[1],  //
      (1.0 - l.sourceShare) * feedback / l.capacityJPerMK[2], g12 / l.capacityJPerMK[2],
      -(g12 + lossSlope) / l.capacityJPerMK[2];
  return j;
}

// What leaves node 2 through the surface, and how that grows with node 2.
struct Outflow {
  units::Temperature surface;
  double heatWPerM;
  double slopeWPerMK;
};

Outflow outflow(const CordLadder& l, double nodeC, units::Temperature air, std::optional<units::Temperature> near) {
  const units::Temperature inside = units::Temperature::fromCelsius(nodeC);
  const units::Temperature surface = surfaceTemperature(l.surface, inside, l.resistance2s, air, near);
  const CordSurface::Loss loss = l.surface.lossAt(surface, air);
  return {surface, loss.heatWPerM, 1.0 / (l.resistance2s + 1.0 / std::max(loss.slopeWPerMK, 1e-9))};
}

struct Trial {
  Vector next;
  units::Temperature surface;  // about where it is then
  double errorK;
};

struct Drive {
  double source20WPerM;
  units::Temperature air;
  std::optional<units::Temperature> surface;  // about where it is
};

Trial tryStep(const CordLadder& l, const Vector& y, double h, const Drive& drive) {
  const double gamma = 1.0 - 1.0 / std::sqrt(2.0);
  const Outflow out = outflow(l, y[2], drive.air, drive.surface);
  const Eigen::Matrix3d inverse =
      (Eigen::Matrix3d::Identity() - gamma * h * slopes(l, drive.source20WPerM, out.slopeWPerMK)).inverse();
  const Vector k1 = inverse * rates(l, y, drive.source20WPerM, out.heatWPerM);
  const Vector inner = y + h * k1;
  const Outflow after = outflow(l, inner[2], drive.air, out.surface);
  const Vector k2 = inverse * (rates(l, inner, drive.source20WPerM, after.heatWPerM) - 2.0 * k1);
  return {y + h * (1.5 * k1 + 0.5 * k2), after.surface, 0.5 * h * (k1 + k2).cwiseAbs().maxCoeff()};
}

}  // namespace

LadderRun::LadderRun(const CordLadder& ladder, units::Temperature air) : m_ladder(ladder), m_air(air) {
  for (const double capacity : ladder.capacityJPerMK) CORDREACH_EXPECTS(capacity > 0.0);
  CORDREACH_EXPECTS(ladder.resistance01 > 0.0 && ladder.resistance12 > 0.0 && ladder.resistance2s >= 0.0);
  m_nodesC.fill(air.celsius());
}

void LadderRun::changeSurroundings(const CordLadder& ladder, units::Temperature air) {
  m_ladder = ladder;
  m_air = air;
  m_stepS = 1.0;
}

HeatResult LadderRun::now() const {
  const units::Temperature body = units::Temperature::fromCelsius(m_nodesC[2]);
  return {units::Temperature::fromCelsius(m_nodesC[0]),
          surfaceTemperature(m_ladder.surface, body, m_ladder.resistance2s, m_air)};
}

void LadderRun::advance(units::Current rms, units::Duration duration) {
  constexpr double kNoLimitC = 1e9;
  static_cast<void>(run(rms.si() * rms.si() * m_ladder.ohmPerM20, duration.si(), kNoLimitC));
}

std::optional<units::Duration> LadderRun::advanceUntil(units::Current rms, units::Duration duration,
                                                       units::Temperature limit) {
  return run(rms.si() * rms.si() * m_ladder.ohmPerM20, duration.si(), limit.celsius());
}

std::optional<units::Duration> LadderRun::run(double source20WPerM, double durationS, double limitC) {
  CORDREACH_EXPECTS(durationS >= 0.0);
  const double beyondC = beyondModelTemperature().celsius();
  const double stopC = std::min(limitC, beyondC);
  Vector y(m_nodesC.data());
  double doneS = 0.0;
  if (y[0] >= limitC) return units::Duration::fromSi(0.0);
  m_stepS = std::min(m_stepS, kFirstStepS);
  Drive drive{source20WPerM, m_air, std::nullopt};
  while (doneS < durationS && !m_beyond) {
    const double h = std::min(m_stepS, durationS - doneS);
    const Trial trial = tryStep(m_ladder, y, h, drive);
    ++m_steps;
    const double worst = std::max(trial.errorK / m_toleranceK, (trial.next - y).cwiseAbs().maxCoeff() / kLargestRiseK);
    const double factor = std::clamp(0.9 / std::sqrt(std::max(worst, 1e-8)), 0.2, 4.0);
    const bool accepted = worst <= 1.0 || h <= kSmallestStepS;
    // A step cut short by the interval's end says nothing against a longer one later.
    if (!accepted || h >= m_stepS || factor < 1.0) m_stepS = std::clamp(h * factor, kSmallestStepS, kLargestStepS);
    if (!accepted) continue;
    if (trial.next[0] >= stopC) {
      // A straight line inside a step is off by less than the step's own error.
      const double part = (stopC - y[0]) / (trial.next[0] - y[0]);
      y += part * (trial.next - y);
      std::copy(y.data(), y.data() + 3, m_nodesC.begin());
      m_beyond = limitC > beyondC;
      return m_beyond ? std::nullopt : std::optional(units::Duration::fromSi(doneS + part * h));
    }
    y = trial.next;
    drive.surface = trial.surface;
    doneS += h;
  }
  std::copy(y.data(), y.data() + 3, m_nodesC.begin());
  return std::nullopt;
}

}  // namespace cordreach::physics
