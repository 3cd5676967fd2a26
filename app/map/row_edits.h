// SPDX-License-Identifier: GPL-3.0-or-later
// Outlets in a row, with numbers that go on where the floor's, the room's or the building's stop. No Qt.
#pragma once

#include <string>
#include <vector>

#include "map/plug_edits.h"
#include "site/site.h"

namespace cordreach::app {

enum class NumberBy { Floor, Room, Building };

// The room whose outline holds the point; null: none.
[[nodiscard]] const site::Room* roomAt(const site::Site& site, const site::Place& place);

// The label that follows the highest one of that floor or room; where there is none yet, "2-01" on the floor above the
// ground, "104-01" in room 104. A place outside any room is numbered by its floor.
[[nodiscard]] std::string nextLabelBy(const site::Site& site, NumberBy by, const site::Place& place);

// `count` labels from `first` on, in its spelling, without those that the site has already.
[[nodiscard]] std::vector<std::string> labelsFrom(const site::Site& site, const std::string& first, std::size_t count);

inline constexpr std::size_t kMostInRow = 400;

struct OutletRow {
  site::FloorId floor;
  geometry::Point from{};
  geometry::Point to{};
  units::Length spacing{};
  std::string firstLabel{};
  std::string receptacle{};  // empty: unknown
};

// Where they come to stand: the first at `from`, then one each spacing, none beyond `to`; at most kMostInRow.
[[nodiscard]] std::vector<geometry::Point> pointsOf(const OutletRow& row);

// "outlet.row": duplexes whose breakers nobody knows, each with the room it is in. Errors: row.bad_spacing,
// row.too_many {most}.
[[nodiscard]] EditResult addOutletRow(const site::Site& site, const OutletRow& row);

}  // namespace cordreach::app
