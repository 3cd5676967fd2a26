// SPDX-License-Identifier: GPL-3.0-or-later
// The integral over speed. With w = w_end (1 - e^-u) an exponential end takes equal times for equal steps of u.
#include "physics/start_run.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "base/contract.h"

namespace cordreach::physics {
namespace {

constexpr int kScan = 256;
constexpr double kFull = 0.95;
constexpr double kEnd = 0.999;
constexpr std::array<std::array<double, 2>, 3> kGauss{
    {{-0.7745966692414834, 5.0 / 9.0}, {0.0, 8.0 / 9.0}, {0.7745966692414834, 5.0 / 9.0}}};

double surplus(const RunUpPoint& point) { return point.motorNm - point.loadNm; }

// The lowest speed at which the torques balance: the first that it can't pass.
double balanceOf(const RunUp& runUp) {
  const double step = runUp.topRadPerS / kScan;
  for (int i = 1; i <= kScan; ++i) {
    if (surplus(runUp.at(i * step)) > 0.0) continue;
    double low = (i - 1) * step;
    double high = i * step;
    for (int j = 0; j < 60; ++j) {
      const double middle = 0.5 * (low + high);
      (surplus(runUp.at(middle)) > 0.0 ? low : high) = middle;
    }
    return low;
  }
  return runUp.topRadPerS;
}

// Boundaries of the pieces, 95 % and the jump among them.
std::vector<double> speedsOf(const RunUp& runUp, double endRadPerS) {
  std::vector<double> speeds{0.0};
  const double uFull = -std::log1p(-kFull);
  const double uEnd = -std::log1p(-kEnd);
  const auto add = [&](double from, double to, int pieces) {
    for (int i = 1; i <= pieces; ++i) speeds.push_back(endRadPerS * -std::expm1(-(from + (to - from) * i / pieces)));
  };
  add(0.0, uFull, 2 * runUp.pieces);
  add(uFull, uEnd, runUp.pieces);
  if (runUp.breakRadPerS && *runUp.breakRadPerS < speeds.back()) speeds.push_back(*runUp.breakRadPerS);
  std::sort(speeds.begin(), speeds.end());
  return speeds;
}

class Integration {
 public:
  Integration(const RunUp& runUp, double endRadPerS) : m_runUp(runUp), m_endRadPerS(endRadPerS) {}

  StartRun run() {
    const RunUpPoint first = m_runUp.at(0.0);
    sample(0.0, first);
    if (surplus(first) > 0.0 && m_endRadPerS > 0.0) accelerate();
    m_run.settled = units::Current::fromSi(m_run.samples.back().totalRmsA);
    return std::move(m_run);
  }

 private:
  void sample(double speed, const RunUpPoint& point) {
    const double share = m_endRadPerS > 0.0 ? speed / m_endRadPerS : 0.0;
    if (m_run.samples.empty() || point.totalRmsA > m_run.peak.si()) {
      m_run.peak = units::Current::fromSi(point.totalRmsA);
      m_run.lowest = units::Voltage::fromSi(point.voltageV);
    }
    m_run.samples.push_back({m_timeS, point.currentA, point.totalRmsA, point.voltageV, share});
  }

  void accelerate() {
    const bool completes = m_endRadPerS >= m_runUp.runsFromRadPerS;
    m_run.endRpm = m_endRadPerS * 30.0 / std::numbers::pi;
    const std::vector<double> speeds = speedsOf(m_runUp, m_endRadPerS);
    const double full = kFull * m_endRadPerS;
    for (std::size_t i = 1; i < speeds.size(); ++i) {
      piece(speeds[i - 1], speeds[i]);
      sample(speeds[i], m_runUp.at(speeds[i]));
      if (!completes || m_run.time95 || speeds[i] < full * (1.0 - 1e-12)) continue;
      m_run.time95 = units::Duration::fromSi(m_timeS);
      m_run.i2tA2S = m_i2tA2S;
    }
    if (!completes) m_run.i2tA2S = m_i2tA2S;
    m_run.energy.kineticJ = 0.5 * m_runUp.inertiaKgM2 * speeds.back() * speeds.back();
  }

  void piece(double from, double to) {
    for (const auto& [place, weight] : kGauss) {
      const double speed = 0.5 * (from + to) + 0.5 * (to - from) * place;
      const RunUpPoint point = m_runUp.at(speed);
      const double stepS = 0.5 * (to - from) * weight * m_runUp.inertiaKgM2 / surplus(point);
      m_timeS += stepS;
      m_i2tA2S += point.totalRmsA * point.totalRmsA * stepS;
      m_run.energy.inputJ += point.inputW * stepS;
      m_run.energy.lossJ += point.lossW * stepS;
      m_run.energy.loadJ += point.loadNm * speed * stepS;
    }
  }

  const RunUp& m_runUp;
  double m_endRadPerS;
  double m_timeS = 0;
  double m_i2tA2S = 0;
  StartRun m_run;
};

}  // namespace

StartRun integrate(const RunUp& runUp) {
  CORDREACH_EXPECTS(runUp.inertiaKgM2 > 0.0 && runUp.topRadPerS > 0.0 && runUp.pieces > 0);
  return Integration(runUp, surplus(runUp.at(0.0)) > 0.0 ? balanceOf(runUp) : 0.0).run();
}

}  // namespace cordreach::physics
