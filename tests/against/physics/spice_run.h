// SPDX-License-Identifier: GPL-3.0-or-later
// One transient of ngspice: a circuit's text in, series of time and value out.
#pragma once

#include <string>
#include <utility>
#include <vector>

namespace cordreach::testing {

using SpiceSeries = std::vector<std::pair<double, double>>;  // seconds, value

// Runs `ngspice -b` in a temporary folder, from the initial conditions of the text. Empty if ngspice is missing or
// fails.
[[nodiscard]] std::vector<SpiceSeries> runSpice(const std::string& circuit, const std::vector<std::string>& wanted,
                                                double stepS, double endS);

// The series at a time, in a straight line between its points.
[[nodiscard]] double at(const SpiceSeries& series, double timeS);

}  // namespace cordreach::testing
