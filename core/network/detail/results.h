// SPDX-License-Identifier: GPL-3.0-or-later
// From the flat arrays back to what the callers asked for: volts, amps with distortion, and the summary.
#pragma once

#include <span>
#include <string>

#include "network/detail/newton.h"

namespace cordreach::network::detail {

[[nodiscard]] CircuitSolution circuitResult(const FlatNetwork& flat, const FlatCircuit& place, const Circuit& circuit,
                                            const Newton& newton);

[[nodiscard]] std::vector<Phasor> panelResult(const FlatPanel& panel, const Newton& newton);

// `circuits`: the list that the flat circuits' `original` counts in.
[[nodiscard]] Summary summarise(const FlatNetwork& flat, std::span<const Circuit> circuits, const Newton& newton,
                                EndReason end);

}  // namespace cordreach::network::detail
