// SPDX-License-Identifier: GPL-3.0-or-later
// Newton's method over a flat network, with what keeps it honest near a motor's pull-out: a line search on the loads'
// current mismatch; where that gets stuck (a fold: no running solution nearby) the load that makes the fold is held at
// its low-voltage impedance; what has no running point at the solution is marked stalled, together, and solved again.
#pragma once

#include <cstddef>
#include <vector>

#include "network/detail/elimination.h"
#include "network/detail/linear_sweep.h"
#include "network/solve.h"

namespace cordreach::network::detail {

// What a run needs, kept from one to the next: fresh memory costs more than the arithmetic done in it.
struct Buffers {
  std::vector<double> voltage;
  std::vector<double> next;
  std::vector<double> norton;
  std::vector<Folded> folded;
  std::vector<LoadState> loads;
  std::vector<LoadState> trialLoads;
  std::vector<physics::LoadPoint> points;
  std::vector<double> circuitMismatch;
  std::vector<double> trialCircuitMismatch;
  std::vector<double> fullStepMismatch;
};

class Newton {
 public:
  // Marks are kept in the network's loads.
  Newton(FlatNetwork& network, const SolveOptions& options, Buffers& buffers);

  EndReason run();

  [[nodiscard]] const std::vector<double>& voltage() const { return m_buffers.voltage; }
  [[nodiscard]] const std::vector<physics::LoadPoint>& points() const { return m_buffers.points; }
  [[nodiscard]] const std::vector<LoadState>& loads() const { return m_buffers.loads; }
  [[nodiscard]] std::size_t passes() const { return m_passes; }
  [[nodiscard]] std::size_t steps() const { return m_steps; }
  [[nodiscard]] double lastChangeV() const { return m_lastChangeV; }

 private:
  struct Trial {
    double mismatch = 0;   // sum of squared mismatches, A²
    double drawn = 0;      // sum of squared currents, A²
    bool straight = true;  // no load's admittance changes with its volts here: the next step may be the last
  };

  EndReason pass();
  void evaluate(double stepFraction, bool keepPoints = false);
  double evaluateLoad(std::size_t k, double stepFraction, bool keepPoint);
  void moveLoad(const FlatLoad& load, LoadState& state, double stepFraction) const;
  [[nodiscard]] physics::LoadPoint standingPointOf(const FlatLoad& load, double voltageV) const;
  void accept(double stepFraction);
  bool lineSearch();
  bool advance();
  void restart();
  [[nodiscard]] double largestChangeV() const;
  [[nodiscard]] bool atRoundingFloor(const Trial& trial) const;
  bool holdWhatFolds();
  bool releaseWhatRuns();
  bool markStalled();
  void report() const;

  FlatNetwork& m_network;
  const SolveOptions& m_options;
  Elimination m_elimination;
  Buffers& m_buffers;
  Trial m_current;
  Trial m_trial;
  double m_firstMismatch = 0;
  double m_lastChangeV = 0;
  std::size_t m_passes = 0;
  std::size_t m_steps = 0;
  std::size_t m_poorSteps = 0;
};

}  // namespace cordreach::network::detail
