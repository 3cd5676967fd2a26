// SPDX-License-Identifier: GPL-3.0-or-later
// The curves of two sides as a table: one row an instant, every column named with its unit.
#pragma once

#include <string>

#include "study/demonstration.h"

namespace cordreach::io {

// Columns of A, then the same of B, after time_s. Where a cord is beyond the model the cells stay empty. Both sides
// have the same step and run.
[[nodiscard]] std::string demonstrationCsv(const study::Demonstration& a, const study::Demonstration& b);

}  // namespace cordreach::io
