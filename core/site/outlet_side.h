// SPDX-License-Identifier: GPL-3.0-or-later
// Which side of its wall an outlet is on.
#pragma once

#include <optional>
#include <vector>

#include "site/outlet.h"
#include "site/place.h"

namespace cordreach::site {

inline constexpr units::Length kOnWall = 0.6 * units::metre;  // own: so close to a wall an outlet is on it

// Away from its wall, length 1: by the word for the wall, else from the nearest wall. None: no wall is near. The outlet
// has a place. Right on a wall without a word for it, either side.
[[nodiscard]] std::optional<geometry::Point> inwardOf(const Outlet& outlet, const std::vector<Wall>& walls);

}  // namespace cordreach::site
