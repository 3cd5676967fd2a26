// SPDX-License-Identifier: GPL-3.0-or-later
// The phases of a circuit as people write them: "A", "AB".
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"

namespace cordreach::app {

[[nodiscard]] std::string phasesText(const std::vector<std::size_t>& phases);

// Capitals or not, with or without blanks, commas and slashes between. Error: field.bad_phases.
[[nodiscard]] base::Result<std::vector<std::size_t>> readPhases(std::string_view text);

}  // namespace cordreach::app
