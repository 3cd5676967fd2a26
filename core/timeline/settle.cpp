// SPDX-License-Identifier: GPL-3.0-or-later
#include "timeline/settle.h"

#include <algorithm>
#include <cmath>

namespace cordreach::timeline {

namespace {

void warmBranches(network::Network& network, const std::vector<HeatedBranch>& heated,
                  const network::Solution& solution) {
  for (const HeatedBranch& branch : heated) {
    const network::BranchCurrents& currents = solution.circuits[branch.circuit].branches[branch.node];
    const double poleRmsA = *std::max_element(currents.poleRmsA.begin(), currents.poleRmsA.end());
    network.circuits[branch.circuit].nodes[branch.node].branch = branch.heat->warm(poleRmsA, currents.neutralRmsA);
  }
}

double largestChangeV(const network::Solution& before, const network::Solution& after) {
  double largest = 0.0;
  for (std::size_t c = 0; c < after.circuits.size(); ++c) {
    const auto& loads = after.circuits[c].loads;
    for (std::size_t i = 0; i < loads.size(); ++i) {
      largest = std::max(largest, std::abs(loads[i].voltageV - before.circuits[c].loads[i].voltageV));
    }
  }
  return largest;
}

bool newlyStalled(const network::Solution& before, const network::Solution& after) {
  return after.summary.stalled.size() > before.summary.stalled.size();
}

}  // namespace

Settled settle(network::Network network, const std::vector<HeatedBranch>& heated, const SettleOptions& options) {
  Settled settled;
  settled.cold = network::solve(network, options.solve);
  settled.warm = settled.cold;
  while (settled.rounds < options.maxRounds && !options.solve.progress.stopRequested()) {
    ++settled.rounds;
    warmBranches(network, heated, settled.warm);
    network::Solution next = network::solve(network, options.solve);
    const double changeV = largestChangeV(settled.warm, next);
    const bool stalledNow = newlyStalled(settled.warm, next);
    settled.warm = std::move(next);
    // A stalled machine opens its breaker within seconds: temperatures have no time to follow its current.
    if (stalledNow) return settled;
    if (changeV <= options.toleranceV) {
      settled.atRest = true;
      return settled;
    }
  }
  return settled;
}

}  // namespace cordreach::timeline
