// SPDX-License-Identifier: GPL-3.0-or-later
// What is printed along a cord's jacket, as far as it can be read: `SJTW 14/3 60C 300V`, in any order and case, both
// systems (`SVT 18AWGX2C`, `3/C 14 AWG`, `H05VV-F 3G1.5`, `3x2.5mm²`), worn or incomplete. What cannot be read is
// unknown, never guessed. `?` and `_` stand for one unreadable character, `*` for some.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "tables/cord_types.h"
#include "units/quantity.h"
#include "units/temperature.h"
#include "units/wire_size.h"

namespace cordreach::tables {

struct CordLegend {
  std::optional<std::string> type;         // letters of a known type, when just one fits
  std::vector<std::string> possibleTypes;  // all that fit a worn one; holds `type` alone when that is known
  std::optional<CordFamily> family;        // when all possible types share it
  std::optional<units::WireSize> size;
  std::optional<int> conductors;             // the earth included
  std::optional<units::Temperature> rating;  // the lowest, where several stand (`105C dry 60C wet`)
  std::optional<units::Voltage> voltage;     // the lowest; of a metric pair (`300/500V`) the second
  std::vector<std::string> unread;           // what was not understood, capitals, at most 40 pieces
};

// Any bytes; cannot fail. Only the first 2000 bytes are read: print repeats every few feet. Two sizes, conductor
// counts or types that contradict each other leave that field unknown.
[[nodiscard]] CordLegend readLegend(std::string_view text);

}  // namespace cordreach::tables
