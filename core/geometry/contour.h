// SPDX-License-Identifier: GPL-3.0-or-later
// Where a cord of a given length ends: the outlines of everything that is no farther than that over a walking field.
//   Marching squares with straight interpolation (Lorensen and Cline 1987 in the plane, memory). Beside a wall the
//   outline runs along the edge of the last open cell.
#pragma once

#include <vector>

#include "geometry/walkable.h"

namespace cordreach::geometry {

using Outline = std::vector<Point>;  // closed: the last point is joined to the first

// Those round it and those of holes in it run opposite ways, so that even-odd and winding fill are the same.
[[nodiscard]] std::vector<Outline> outlinesOf(const WalkField& field, units::Length atMost);

}  // namespace cordreach::geometry
