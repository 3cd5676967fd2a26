// SPDX-License-Identifier: GPL-3.0-or-later
// How a flexible cord is built, by family, wire size and number of conductors: what its heating depends on.
// Thicknesses by UL 62 and NEC Table 400.4 (EN 50525 for metric), diameters typical, within about 5 %.
#pragma once

#include <optional>

#include "tables/cord_types.h"
#include "tables/sourced.h"
#include "units/quantity.h"
#include "units/wire_size.h"

namespace cordreach::tables {

struct CordConstruction {
  CordFamily family;
  units::WireSize size;
  int conductors;  // 2 or 3, the earth included
  Sourced<units::Length> strandBundle;
  Sourced<units::Length> insulation;
  Sourced<units::Length> jacket;                     // 0 for parallel cords, whose insulation is the outside
  Sourced<units::Length> outerDiameter;              // flat cords: of the circle with their perimeter
  Sourced<units::ResistancePerLength> resistance20;  // of one conductor at 20 °C, stranded bare copper
};

// Exactly that cord, or nothing.
[[nodiscard]] std::optional<CordConstruction> cordConstruction(CordFamily family, const units::WireSize& size,
                                                               int conductors);

// The tabulated cord that stands in, on the hot side: of the family's sizes the heaviest with no more copper than
// `size`; a family without one gives way to Hard. Two conductors stay two, all other numbers count as three. Nothing
// below 0.75 mm², where no family has a row. What was used stands in the result, its resistance too: use
// `resistance20` only when `size` is the one asked for.
[[nodiscard]] std::optional<CordConstruction> nearestCordConstruction(CordFamily family, const units::WireSize& size,
                                                                      int conductors);

}  // namespace cordreach::tables
