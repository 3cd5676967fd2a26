// SPDX-License-Identifier: GPL-3.0-or-later
// Allowed currents of building wire (NEC Table 310.16: 30 °C, at most three carrying conductors in a raceway or cable)
// and the largest device that may protect it (NEC 240.4(D)).
#pragma once

#include <optional>

#include "tables/conductor_metal.h"
#include "tables/sourced.h"
#include "units/quantity.h"
#include "units/wire_size.h"

namespace cordreach::tables {

enum class WireColumn { C60, C75, C90 };

// Copper 14 AWG to 1/0, aluminium 12 AWG to 1/0, editions from 2011 on.
[[nodiscard]] std::optional<Sourced<units::Current>> wireAmpacity(const units::WireSize& size, WireColumn column,
                                                                  Metal metal = Metal::Copper);

// What editions before 2011 printed for copper, where it differed.
[[nodiscard]] std::optional<Sourced<units::Current>> wireAmpacityBefore2011(const units::WireSize& size,
                                                                            WireColumn column);

// Copper 18 to 10 AWG, aluminium 12 and 10; heavier wire goes by its ampacity.
[[nodiscard]] std::optional<Sourced<units::Current>> largestDevice(const units::WireSize& size,
                                                                   Metal metal = Metal::Copper);

}  // namespace cordreach::tables
