// SPDX-License-Identifier: GPL-3.0-or-later
// Finding a unit by how it is spelled.
#pragma once

#include <optional>
#include <span>
#include <string_view>

namespace cordreach::units {

template <class Unit>
struct UnitWord {
  std::string_view spelling;  // lower case
  Unit unit;
};

template <class Unit>
[[nodiscard]] std::optional<Unit> unitSpelled(std::string_view word, std::span<const UnitWord<Unit>> words) {
  for (const auto& known : words) {
    if (known.spelling == word) return known.unit;
  }
  return std::nullopt;
}

}  // namespace cordreach::units
