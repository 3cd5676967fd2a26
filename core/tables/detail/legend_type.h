// SPDX-License-Identifier: GPL-3.0-or-later
// Which cord types a piece of jacket print can mean.
#pragma once

#include <string_view>
#include <vector>

#include "tables/cord_types.h"

namespace cordreach::tables::detail {

// Types that `token` (capitals) spells, hyphens aside, with its unreadable characters standing for any. Empty when
// none does or when fewer than two characters of a worn token are left to go by.
[[nodiscard]] std::vector<const CordType*> typesSpelled(std::string_view token);

// Approval marks, flame tests, file numbers and words that say nothing about the cord's size or type.
[[nodiscard]] bool saysNothing(std::string_view token);

[[nodiscard]] constexpr bool isWorn(char c) { return c == '?' || c == '_' || c == '*'; }

}  // namespace cordreach::tables::detail
