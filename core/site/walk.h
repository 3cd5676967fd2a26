// SPDX-License-Identifier: GPL-3.0-or-later
// How far it is to walk from one place of a floor to another, as a cord would have to be led: round the walls that are
// drawn, or along the corridor lines.
#pragma once

#include <optional>

#include "geometry/walkable.h"
#include "site/site.h"

namespace cordreach::site {

enum class WalkBy {
  Walls,      // round the walls, through their gaps
  Corridors,  // along the corridor lines
  Undrawn,    // by right angles: the floor has neither walls nor corridor lines
  NoWay,      // by right angles: what is drawn leaves no way between the two, or only a very long one
};

struct Walk {
  units::Length length;
  WalkBy by = WalkBy::Undrawn;

  friend bool operator==(const Walk&, const Walk&) = default;
};

// Its corridor lines and walls as they are walked on.
[[nodiscard]] geometry::Ground groundOf(const Floor& floor);

// None: the two are on different floors. What stands at a wall is walked to on its own side of that wall. Where
// corridor lines are drawn and do not lead there, the walls alone count.
[[nodiscard]] std::optional<Walk> walkBetween(const Site& site, const Place& from, const Place& to);

}  // namespace cordreach::site
