// SPDX-License-Identifier: GPL-3.0-or-later
// A jacket's print made plain: capitals and spaces, one byte a character.
#pragma once

#include <string>
#include <string_view>

namespace cordreach::tables::detail {

// Degree signs vanish, `²` is 2, `×` is X, brackets and commas outside numbers are spaces; any other byte that is not
// printable ASCII counts as an unreadable character, `?`.
[[nodiscard]] std::string plainLegend(std::string_view text);

}  // namespace cordreach::tables::detail
