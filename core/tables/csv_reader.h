// SPDX-License-Identifier: GPL-3.0-or-later
// Comma-separated text (RFC 4180) into records of cells, as written.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace cordreach::tables {

// Nothing when the quoting is broken. Blank lines are skipped.
[[nodiscard]] std::optional<std::vector<std::vector<std::string>>> readCsv(std::string_view text);

}  // namespace cordreach::tables
