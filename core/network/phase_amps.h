// SPDX-License-Identifier: GPL-3.0-or-later
// What a panel's main carries: all that hangs on the panel, phase by phase. Fundamentals add as phasors; harmonics, of
// whose phases nothing is kept, as plain numbers: the cautious end.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

#include "network/solve.h"

namespace cordreach::network {

// One circuit as solved otherwise.
struct Instead {
  std::size_t circuit = 0;
  const CircuitSolution* solution = nullptr;  // null: none
};

// Which of the loads count, by circuit and load; empty: all.
using Counts = std::function<bool(std::size_t circuit, std::size_t load)>;

// Of the phase that carries most. `circuits`: one solution for each of the network's circuits.
[[nodiscard]] double largestPhaseA(const Network& network, const std::vector<CircuitSolution>& circuits,
                                   std::size_t panel, const Instead& instead = {}, const Counts& counts = {});

// Whether a panel, or what is fed from it, feeds that circuit.
[[nodiscard]] bool hangsOn(const Network& network, std::size_t circuit, std::size_t panel);

}  // namespace cordreach::network
