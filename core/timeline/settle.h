// SPDX-License-Identifier: GPL-3.0-or-later
// The network and its temperatures brought to rest together: current heats wire, warm wire resists more, and a motor
// that still runs through a cold cord may find no running point once the cord is warm.
#pragma once

#include <cstddef>
#include <memory>
#include <vector>

#include "network/network.h"
#include "network/solve.h"

namespace cordreach::timeline {

// How a branch's impedance follows the current that has long flowed through it.
class BranchHeat {
 public:
  virtual ~BranchHeat() = default;
  [[nodiscard]] virtual network::Branch warm(double poleRmsA, double neutralRmsA) const = 0;
};

struct HeatedBranch {
  std::size_t circuit = 0;
  std::size_t node = 0;
  std::shared_ptr<const BranchHeat> heat;
};

struct SettleOptions {
  double toleranceV = 1e-4;  // largest change of a load's voltage between two rounds
  std::size_t maxRounds = 60;
  network::SolveOptions solve{};
};

struct Settled {
  network::Solution cold;  // at the impedances the network came with
  network::Solution warm;  // at rest; or, when a motor stalls on the way there, at that instant
  std::size_t rounds = 0;
  bool atRest = false;  // false: stalled on the way, stopped, or out of rounds
};

// Takes the network by value: its branch impedances are changed round by round.
[[nodiscard]] Settled settle(network::Network network, const std::vector<HeatedBranch>& heated,
                             const SettleOptions& options = {});

}  // namespace cordreach::timeline
