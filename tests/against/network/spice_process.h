// SPDX-License-Identifier: GPL-3.0-or-later
// One run of `ngspice -b` in a temporary folder.
#pragma once

#include <string>

namespace cordreach::testing {

inline constexpr const char* kSpicePrinted = "answers.txt";  // what it printed

// The contents of that file after the run; empty if ngspice is missing, fails, or does not write it.
[[nodiscard]] std::string spiceOutput(const std::string& netlist, const std::string& file = kSpicePrinted);

}  // namespace cordreach::testing
