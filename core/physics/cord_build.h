// SPDX-License-Identifier: GPL-3.0-or-later
// A cord's cross-section from the tables, ready for the geometry.
#pragma once

#include "physics/cord_geometry.h"
#include "tables/cord_types.h"
#include "units/wire_size.h"

namespace cordreach::physics {

// Dimensions of that cord, or of the tabulated one that stands in on the hot side: same family, no more copper. Below
// 0.75 mm² the lightest metric cord stands in, which is on the cool side. Two conductors stay two, others count as
// three.
[[nodiscard]] CordBuild buildOf(const units::WireSize& size, int conductors, tables::CordFamily family, int carrying);

}  // namespace cordreach::physics
