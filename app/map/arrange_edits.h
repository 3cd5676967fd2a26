// SPDX-License-Identifier: GPL-3.0-or-later
// Things of a floor put in line, spread evenly, or once more on another floor. No Qt.
#pragma once

#include <vector>

#include "map/place_edits.h"

namespace cordreach::app {

// A thing and where the plan shows it.
struct Standing {
  rules::Subject subject;
  geometry::Point at{};
};

enum class Arrangement {
  Row,           // side by side: all as far down as the first
  Column,        // one under the other: all as far right as the first
  SpreadAcross,  // equal distances from left to right, the outermost stay
  SpreadDown
};

[[nodiscard]] std::vector<Moved> arranged(std::vector<Standing> things, Arrangement arrangement);

// "things.copy_to_floor": the outlets among them; machines, panels and fixed loads are one of their kind and
// stay. The same places, numbers that go on from that floor's, breakers that nobody knows yet. Error: copy.nothing.
[[nodiscard]] EditResult copyToFloor(const site::Site& site, const std::vector<rules::Subject>& subjects,
                                     const site::FloorId& floor);

}  // namespace cordreach::app
