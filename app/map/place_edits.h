// SPDX-License-Identifier: GPL-3.0-or-later
// What the pointing tools do to things on the plan, as edits. No Qt.
#pragma once

#include <optional>
#include <vector>

#include "map/plug_edits.h"
#include "rules/finding.h"
#include "site/edit.h"
#include "site/site.h"

namespace cordreach::app {

// "things.move": rooms, and outlets, panels, machines and fixed loads with a place on any floor; a machine takes along
// where its given hookups work.
struct Shift {
  double rightM = 0;
  double downM = 0;
};
[[nodiscard]] EditResult moveThings(const site::Site& site, const std::vector<rules::Subject>& subjects,
                                    const std::vector<site::HookupId>& hookups, const Shift& shift);
// The same, each by a way of its own.
struct Moved {
  rules::Subject subject;
  Shift shift{};
};
[[nodiscard]] EditResult moveEach(const site::Site& site, const std::vector<Moved>& things,
                                  const std::vector<site::HookupId>& hookups);

// "wall.add", "wall.remove".
[[nodiscard]] EditResult addWall(const site::Site& site, const site::FloorId& floor, const site::Wall& wall);
[[nodiscard]] EditResult removeWall(const site::Site& site, const site::FloorId& floor, std::size_t index);

// "corridor.add", "corridor.remove": lines along which people walk, where no walls are drawn.
[[nodiscard]] EditResult addCorridorLine(const site::Site& site, const site::FloorId& floor,
                                         const site::CorridorLine& line);
[[nodiscard]] EditResult removeCorridorLine(const site::Site& site, const site::FloorId& floor, std::size_t index);

// "room.add"; "room.change" with the room as it shall be. Error: room.no_area.
[[nodiscard]] EditResult addRoom(const site::Site& site, const site::Room& room);
[[nodiscard]] EditResult changeRoom(const site::Site& site, const site::Room& room);

// "run.add": from the panel (no outlet) or from an outlet of the same circuit; an outlet whose breaker nobody knows
// takes the other's circuit, as assumed. The path, from end to end, where it is drawn with bends; empty: none. Errors:
// run.no_circuit, run.two_circuits, and those of site::apply.
[[nodiscard]] EditResult addRun(const site::Site& site, const std::optional<site::OutletId>& from,
                                const site::OutletId& to, std::vector<geometry::Point> path = {});

}  // namespace cordreach::app
