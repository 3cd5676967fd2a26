// SPDX-License-Identifier: GPL-3.0-or-later
// Volts and amps of a whole network, from no load: Newton's method on the nodes' line-to-neutral voltages, each step
// solved exactly by eliminating the trees from their leaves (cost linear in the number of nodes).
// Machines without a running point at the solution are marked stalled together and the solve is repeated; marks are
// never taken back, so it ends.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "base/progress.h"
#include "network/network.h"
#include "network/per_pole.h"
#include "network/slice.h"

namespace cordreach::network {

struct SolveOptions {
  double toleranceV = 1e-9;    // largest change of any node voltage in the last step
  std::size_t maxSteps = 200;  // Newton steps of one pass
  base::Progress progress{};
};

enum class EndReason { Converged, Stopped, StepLimit };

struct LoadSolution {
  Phasor voltageV;       // across its terminals
  Phasor currentA;       // fundamental
  double totalRmsA = 0;  // with distortion: what heats wires and breakers
  physics::LoadPoint point;
  bool stalled = false;
};

struct BranchCurrents {
  PerPole<double> poleRmsA;  // total rms of each pole, distortion included
  double neutralRmsA = 0;    // total rms; third harmonics of poles added as phasors at three times the angle
};

struct CircuitSolution {
  Slice<PerPole<Phasor>> nodeV;    // [node][pole], line to neutral
  Slice<BranchCurrents> branches;  // [node]: the branch that ends at that node
  Slice<LoadSolution> loads;
};

struct Summary {
  EndReason end = EndReason::Converged;
  std::size_t passes = 0;            // one more than the rounds in which something was newly marked stalled
  std::size_t steps = 0;             // Newton steps over all passes
  double lastChangeV = 0;            // largest voltage change of the last step
  double residualA = 0;              // largest current mismatch of any node
  std::string worstPart;             // label of the node with that mismatch
  std::vector<std::string> stalled;  // labels of the loads that stand
};

struct Solution {
  std::vector<std::vector<Phasor>> panelV;  // [panel][phase], line to neutral
  std::vector<CircuitSolution> circuits;
  Summary summary;
};

[[nodiscard]] Solution solve(const Network& network, const SolveOptions& options = {});

}  // namespace cordreach::network
