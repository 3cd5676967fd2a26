// SPDX-License-Identifier: GPL-3.0-or-later
// From the flat arrays back to what the callers asked for: volts, amps with distortion, and the summary.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "network/detail/newton.h"

namespace cordreach::network::detail {

// One for each flat circuit, in their order.
[[nodiscard]] std::vector<CircuitSolution> circuitResults(const FlatNetwork& flat, const Newton& newton);

[[nodiscard]] std::vector<Phasor> panelResult(const FlatPanel& panel, const Newton& newton);

// `circuits`: the list that the flat circuits' `original` counts in.
[[nodiscard]] Summary summarise(const FlatNetwork& flat, std::span<const Circuit> circuits, const Newton& newton,
                                EndReason end);

}  // namespace cordreach::network::detail
