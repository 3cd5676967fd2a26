// SPDX-License-Identifier: GPL-3.0-or-later
// Flexible cord currents out of their tables.
#include "tables/cord_ampacity.h"

#include <string>

#include "tables/size_key.h"
#include "tables/table.h"

namespace cordreach::tables {

std::optional<Sourced<units::Current>> cordAmpacity(const units::WireSize& size, CordColumn column) {
  const char* word = column == CordColumn::ThreeCarrying ? ".three"
                     : column == CordColumn::TwoCarrying ? ".two"
                                                         : ".heater";
  const Row* row = table("cord_ampacity").find(sizeKey(size) + word);
  if (row == nullptr) return std::nullopt;
  return Sourced<units::Current>{row->number("ampacity_a") * units::ampere, &row->source()};
}

std::optional<Sourced<double>> cordBundlingFactor(int carryingConductors) {
  for (const Row& row : table("cord_bundling").rows()) {
    if (carryingConductors < row.number("from_conductors")) continue;
    if (!row.empty("to_conductors") && carryingConductors > row.number("to_conductors")) continue;
    return Sourced<double>{row.number("factor"), &row.source()};
  }
  return std::nullopt;
}

}  // namespace cordreach::tables
