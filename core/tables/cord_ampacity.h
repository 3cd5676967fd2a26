// SPDX-License-Identifier: GPL-3.0-or-later
// Allowed currents of flexible cords as printed: NEC Table 400.5(A)(1), copper, air of 30 °C; and what remains of
// them with more than three current-carrying conductors, Table 400.5(A)(3).
#pragma once

#include <optional>

#include "tables/sourced.h"
#include "units/quantity.h"
#include "units/wire_size.h"

namespace cordreach::tables {

enum class CordColumn {
  ThreeCarrying,  // column A
  TwoCarrying,    // column B: also a three-wire cord whose third is the earth
  Heater,         // heater cords, HPN and HSJ families
};

// 18 to 4 AWG, the heater column 18 to 10 with gaps. A metric size has no row here: see iec_conductors.h.
[[nodiscard]] std::optional<Sourced<units::Current>> cordAmpacity(const units::WireSize& size, CordColumn column);

// Factor on column A for that many current-carrying conductors in one cord; nothing for three and fewer, where the
// columns themselves apply.
[[nodiscard]] std::optional<Sourced<double>> cordBundlingFactor(int carryingConductors);

}  // namespace cordreach::tables
