// SPDX-License-Identifier: GPL-3.0-or-later
// A part of a network solved alone, for answers while something is being dragged: one circuit at a held bus, or a
// panel with all that hangs on it from a held voltage in front of its feeder. From no load, with the same rules for
// stalled machines as `solve`; equal to `solve` where the held voltages are those of the whole solution.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "network/solve.h"

namespace cordreach::network {

struct CircuitAlone {
  CircuitSolution circuit;
  Summary summary;
};

// `busV`: the line-to-neutral voltage behind each of the circuit's poles, in their order.
[[nodiscard]] CircuitAlone solveCircuit(const Circuit& circuit, std::span<const Phasor> busV,
                                        const SolveOptions& options = {});

struct PanelAlone {
  std::vector<std::size_t> panels;          // the panel and those fed from it, as indices in the network
  std::vector<std::vector<Phasor>> panelV;  // of each of these
  std::vector<std::size_t> circuitIndices;  // their circuits
  std::vector<CircuitSolution> circuits;    // of each of these
  Summary summary;
};

// `feedingV`: one voltage a phase of this panel: its source's open-circuit volts, or those of the feeding panel's bus.
[[nodiscard]] PanelAlone solvePanel(const Network& network, std::size_t panel, std::span<const Phasor> feedingV,
                                    const SolveOptions& options = {});

// What `solvePanel` needs, taken from a solution of the whole.
[[nodiscard]] std::vector<Phasor> feedingVoltages(const Network& network, std::size_t panel, const Solution& solution);

}  // namespace cordreach::network
