// SPDX-License-Identifier: GPL-3.0-or-later
// Plugs and receptacles by their configuration: ANSI/NEMA WD 6 numbers (`5-15`, `L5-20`), `iec` for the earthed 16 A
// European ones, `bs1363` for the British. A plug and its receptacle share the key.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "tables/source.h"
#include "units/quantity.h"

namespace cordreach::tables {

struct ReceptacleType {
  std::string key;
  units::Current rating;
  units::Voltage voltage;  // rated: 125 V for a 120 V circuit; to neutral where there is one
  int hotPoles;            // 2: across two phases, or with a neutral both legs
  bool neutral;
  bool earth;
  bool locking;
  std::vector<std::string> plugFits;  // receptacles that a plug of this configuration goes into
  const Source* from;

  [[nodiscard]] const Source& source() const { return *from; }
};

[[nodiscard]] std::span<const ReceptacleType> receptacleTypes();

// Null when the key is unknown.
[[nodiscard]] const ReceptacleType* receptacleType(std::string_view key);

// Whether a plug goes into a receptacle; nothing when either key is unknown or empty.
[[nodiscard]] std::optional<bool> plugFits(std::string_view plug, std::string_view receptacle);

}  // namespace cordreach::tables
