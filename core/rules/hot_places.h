// SPDX-License-Identifier: GPL-3.0-or-later
// Where the plan makes heat: cords, plugs in their sockets, and the wire in the walls, each at its worst moment. A list
// to look at; what is too hot is a finding besides.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "rules/finding.h"
#include "site/ids.h"
#include "site/site.h"
#include "study/answer.h"

namespace cordreach::rules {

enum class HotKind { Extension, OwnCord, Plug, WallWire };

struct HotPlace {
  HotKind kind;
  Subject subject;                                  // cord; machine; of a plug what it is in; circuit
  std::optional<site::OutletId> outlet{};           // where a plug is in a wall
  std::optional<site::HookupId> hookup{};           // whose answer it is; none: of a circuit
  std::optional<units::Temperature> temperature{};  // likely, of the hottest copper; of a plug its body. None: beyond
                                                    // the model
  std::optional<units::Temperature> high{};         // at the worse end of what is uncertain
  units::Temperature limit;                         // of its insulation; of a plug the room with the rise it may have
  bool limitGuessed = false;                        // nobody knows the insulation: the least there is
  // Watts turned into heat along it: of a cord I²R both ways, as warm as its hottest stretch; of wall wire the
  // machines' amps times the volts that they lose in it, fixed loads left out. None: not told.
  std::optional<units::Power> lost{};
  bool lacksLoads = false;  // a fixed load draws through it, and its part of the watts is not told
};

// Hottest first; what is beyond the model before all. What carries nothing is left out.
[[nodiscard]] std::vector<HotPlace> hotPlaces(const site::Site& site, const study::Answer& answer);

[[nodiscard]] std::string_view nameOf(HotKind kind);  // "extension", "own_cord", "plug", "wall_wire"

}  // namespace cordreach::rules
