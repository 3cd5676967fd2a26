// SPDX-License-Identifier: GPL-3.0-or-later
// Steps, line search and passes; which load to hold at a fold is in fold_search.cpp.
#include "network/detail/newton.h"

#include <algorithm>
#include <cmath>

#include "network/detail/fold_search.h"

namespace cordreach::network::detail {
namespace {

constexpr double kSmallestStep = 1.0 / 16.0;
constexpr double kEnoughDescent = 1e-4;    // Armijo's constant, on the squared mismatch
constexpr double kPoorStep = 0.25;         // of the squared mismatch: even near a double root a step leaves a 16th
constexpr std::size_t kMostPoorSteps = 6;  // in one go, before the sticking place is called a fold
constexpr double kRoundingFloor = 1e-26;   // squared mismatch over squared current
constexpr double kSteepestSlope = 1e9;     // S/V; beyond it a law stands on its kink, where the slope says nothing
constexpr std::uint8_t kMostReleases = 2;  // of one load; then it stays held or is marked
constexpr double kSameAdmittance = 1e-9;   // relative

// With I = Y(|u|) u the derivative is dI = Y du + u Y' (u . du)/|u|, a real 2x2 matrix D, and I - D u = -u Y' |u|.
// Adds what the slope Y' brings.
void bend(LoadState& to, double slopeRe, double slopeIm, double size) {
  const double bendRe = to.uRe * slopeRe - to.uIm * slopeIm;
  const double bendIm = to.uRe * slopeIm + to.uIm * slopeRe;
  const double unitRe = size > 0 ? to.uRe / size : 0;
  const double unitIm = size > 0 ? to.uIm / size : 0;
  to.d.a += bendRe * unitRe;
  to.d.b += bendRe * unitIm;
  to.d.c += bendIm * unitRe;
  to.d.d += bendIm * unitIm;
  to.sRe = -bendRe * size;
  to.sIm = -bendIm * size;
}

}  // namespace

Newton::Newton(FlatNetwork& network, const SolveOptions& options, Buffers& buffers)
    : m_network(network), m_options(options), m_elimination(network, buffers.norton), m_buffers(buffers) {
  m_buffers.voltage.resize(network.voltageSize);
  m_buffers.next.resize(network.voltageSize);
  m_buffers.norton.resize(network.nortonSize);
  m_buffers.loads.resize(network.loads.size());
  m_buffers.trialLoads.resize(network.loads.size());
  m_buffers.points.resize(network.loads.size());
  m_buffers.circuitMismatch.resize(network.circuits.size());
  m_buffers.trialCircuitMismatch.resize(network.circuits.size());
  m_buffers.fullStepMismatch.assign(network.circuits.size(), 0.0);
}

EndReason Newton::run() {
  if (m_network.onlyImpedances && !m_options.progress.stopRequested()) {
    LinearSweep(m_network, m_elimination, m_buffers.folded).run(m_buffers.voltage, m_buffers.loads, m_buffers.points);
    m_passes = m_steps = 1;
    if (m_options.progress.report) m_options.progress.report(1.0);
    return EndReason::Converged;
  }
  m_buffers.loads.assign(m_network.loads.size(), {});
  m_elimination.noLoad(m_buffers.next);
  evaluate(1.0);
  accept(1.0);
  m_firstMismatch = m_current.mismatch;
  for (;;) {
    ++m_passes;
    const EndReason end = pass();
    if (end != EndReason::Converged) {
      evaluate(0.0, true);
      accept(0.0);
      return end;
    }
    if (!markStalled()) {
      if (m_options.progress.report) m_options.progress.report(1.0);
      return end;
    }
    restart();
  }
}

EndReason Newton::pass() {
  std::size_t budget = m_options.maxSteps;
  for (std::size_t step = 0;; ++step) {
    if (m_options.progress.stopRequested()) return EndReason::Stopped;
    if (step >= budget) {
      if (!holdWhatFolds()) return EndReason::StepLimit;
      budget += m_options.maxSteps;
      restart();
    }
    ++m_steps;
    m_elimination.finish(m_buffers.next);
    m_lastChangeV = largestChangeV();
    const bool arrived = m_lastChangeV <= m_options.toleranceV || atRoundingFloor(m_current);
    if (arrived || m_current.straight) {
      evaluate(1.0, true);
      if (arrived || atRoundingFloor(m_trial)) {
        accept(1.0);
        if (!releaseWhatRuns()) return EndReason::Converged;
        restart();
        continue;
      }
    }
    advance();
    report();
  }
}

// One step along m_buffers.next; where it sticks, something is held and the step is not taken.
bool Newton::advance() {
  const double before = m_current.mismatch;
  if (lineSearch() && m_poorSteps < kMostPoorSteps) {
    m_poorSteps = m_current.mismatch > kPoorStep * before ? m_poorSteps + 1 : 0;
    return true;
  }
  m_poorSteps = 0;
  if (holdWhatFolds()) {
    restart();
    return false;
  }
  evaluate(1.0);
  accept(1.0);
  return true;
}

bool Newton::lineSearch() {
  for (double fraction = 1.0; fraction >= kSmallestStep; fraction *= 0.5) {
    evaluate(fraction);
    if (fraction == 1.0) m_buffers.fullStepMismatch = m_buffers.trialCircuitMismatch;
    const bool lower = m_trial.mismatch <= (1.0 - kEnoughDescent * fraction) * m_current.mismatch;
    if (lower || atRoundingFloor(m_trial)) {
      accept(fraction);
      return true;
    }
  }
  return false;
}

bool Newton::atRoundingFloor(const Trial& trial) const { return trial.mismatch <= kRoundingFloor * trial.drawn; }

// The loads again where they are, after a mark or hold has changed what they draw there.
void Newton::restart() {
  evaluate(0.0);
  accept(0.0);
}

// Of a load that does not run: stalled, or held.
physics::LoadPoint Newton::standingPointOf(const FlatLoad& load, double voltageV) const {
  if (load.mode == LoadMode::Stalled) return load.law->stalledAt(voltageV);
  physics::LoadPoint point = load.law->at(0.0);
  point.admittanceSlopeSPerV = 0.0;
  return point;
}

// Along the step both the voltage and what the network gives change in proportion, so Kirchhoff's laws hold all the
// way.
void Newton::moveLoad(const FlatLoad& load, LoadState& state, double stepFraction) const {
  const std::vector<double>& next = m_buffers.next;
  double re = next[load.pole];
  double im = next[load.pole + 1];
  if (load.toPoleIndex != kNeutral) {
    re -= next[load.toPole];
    im -= next[load.toPole + 1];
  }
  const double linearRe = state.sRe + state.d.a * re + state.d.b * im;
  const double linearIm = state.sIm + state.d.c * re + state.d.d * im;
  state.uRe += stepFraction * (re - state.uRe);
  state.uIm += stepFraction * (im - state.uIm);
  state.netRe += stepFraction * (linearRe - state.netRe);
  state.netIm += stepFraction * (linearIm - state.netIm);
}

double Newton::evaluateLoad(std::size_t k, double stepFraction, bool keepPoint) {
  const FlatLoad& load = m_network.loads[k];
  LoadState to = m_buffers.loads[k];
  if (stepFraction > 0) moveLoad(load, to, stepFraction);
  const double size = std::sqrt(to.uRe * to.uRe + to.uIm * to.uIm);
  const physics::LoadPoint point = load.mode == LoadMode::Running ? load.law->at(size) : standingPointOf(load, size);
  const double yRe = point.admittanceS.real();
  const double yIm = point.admittanceS.imag();
  double slopeRe = point.admittanceSlopeSPerV.real();
  double slopeIm = point.admittanceSlopeSPerV.imag();
  if (!(std::abs(slopeRe) < kSteepestSlope && std::abs(slopeIm) < kSteepestSlope)) slopeRe = slopeIm = 0;
  to.d = {yRe, -yIm, yIm, yRe};
  to.sRe = to.sIm = 0;
  if (slopeRe != 0 || slopeIm != 0) {
    m_trial.straight = false;
    bend(to, slopeRe, slopeIm, size);
  }
  m_buffers.trialLoads[k] = to;
  if (keepPoint) m_buffers.points[k] = point;
  const double drawnRe = yRe * to.uRe - yIm * to.uIm;
  const double drawnIm = yRe * to.uIm + yIm * to.uRe;
  m_trial.drawn += drawnRe * drawnRe + drawnIm * drawnIm;
  const double offRe = drawnRe - to.netRe;
  const double offIm = drawnIm - to.netIm;
  return offRe * offRe + offIm * offIm;
}

// Each circuit is folded for the step that follows if this trial is accepted; where points are kept, none follows.
void Newton::evaluate(double stepFraction, bool keepPoints) {
  m_trial = {};
  m_elimination.begin();
  for (std::size_t c = 0; c < m_network.circuits.size(); ++c) {
    const FlatCircuit& circuit = m_network.circuits[c];
    double mismatch = 0;
    for (std::size_t k = circuit.firstLoad; k < circuit.endLoad; ++k) {
      mismatch += evaluateLoad(k, stepFraction, keepPoints);
    }
    m_buffers.trialCircuitMismatch[c] = mismatch;
    m_trial.mismatch += mismatch;
    if (!keepPoints) m_elimination.fold(circuit, m_buffers.trialLoads);
  }
}

void Newton::accept(double stepFraction) {
  m_buffers.loads.swap(m_buffers.trialLoads);
  m_buffers.circuitMismatch.swap(m_buffers.trialCircuitMismatch);
  m_current = m_trial;
  if (stepFraction == 1.0) {
    m_buffers.voltage.swap(m_buffers.next);
  } else if (stepFraction > 0) {
    for (std::size_t i = 0; i < m_buffers.voltage.size(); ++i)
      m_buffers.voltage[i] += stepFraction * (m_buffers.next[i] - m_buffers.voltage[i]);
  }
}

double Newton::largestChangeV() const {
  double largest = 0;
  for (std::size_t i = 0; i < m_buffers.voltage.size(); i += 2) {
    const double re = m_buffers.next[i] - m_buffers.voltage[i];
    const double im = m_buffers.next[i + 1] - m_buffers.voltage[i + 1];
    largest = std::max(largest, re * re + im * im);
  }
  return std::sqrt(largest);
}

bool Newton::holdWhatFolds() {
  const FoldSearch search(m_network, m_buffers.loads, m_buffers.circuitMismatch, m_buffers.fullStepMismatch);
  const std::vector<std::size_t> folding = search.folding();
  for (const std::size_t load : folding) m_network.loads[load].mode = LoadMode::Held;
  return !folding.empty();
}

// A held load belongs at its low-voltage impedance only where its law agrees. A motor below pull-out stays: it will be
// marked. What is held above is let go, a bounded number of times.
bool Newton::releaseWhatRuns() {
  bool released = false;
  for (std::size_t k = 0; k < m_network.loads.size(); ++k) {
    FlatLoad& load = m_network.loads[k];
    if (load.mode != LoadMode::Held || load.releases >= kMostReleases) continue;
    const double voltageV = std::hypot(m_buffers.loads[k].uRe, m_buffers.loads[k].uIm);
    const std::complex<double> held = m_buffers.points[k].admittanceS;
    const bool agrees = load.pullOutV > 0
                            ? voltageV < load.pullOutV
                            : std::abs(load.law->at(voltageV).admittanceS - held) <= kSameAdmittance * std::abs(held);
    if (agrees) continue;
    ++load.releases;
    load.mode = LoadMode::Running;
    released = true;
  }
  return released;
}

bool Newton::markStalled() {
  bool marked = false;
  for (std::size_t k = 0; k < m_network.loads.size(); ++k) {
    FlatLoad& load = m_network.loads[k];
    if (load.mode == LoadMode::Stalled || load.pullOutV <= 0) continue;
    if (load.mode == LoadMode::Running && m_buffers.points[k].hasRunningPoint) continue;
    load.mode = LoadMode::Stalled;
    marked = true;
  }
  return marked;
}

// Mismatch falls over some 26 decades; the logarithm is the best guess at how far along this is.
void Newton::report() const {
  if (!m_options.progress.report || m_current.mismatch <= 0 || m_firstMismatch <= 0) return;
  const double decades = -std::log10(m_current.mismatch / m_firstMismatch);
  m_options.progress.report(std::clamp(decades / -std::log10(kRoundingFloor), 0.0, 0.99));
}

}  // namespace cordreach::network::detail
