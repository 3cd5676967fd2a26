// SPDX-License-Identifier: GPL-3.0-or-later
// An outlet nobody has traced yet, with the next number.
#include "map/tool_place.h"
#include "panels/new_things.h"

namespace cordreach::app {

std::unique_ptr<MapTool> outletTool(MapCanvas& canvas) {
  const auto make = [](const site::Site& site, const site::Place& place) -> EditResult {
    NewOutlet wanted;
    wanted.label = nextOutletLabel(site);
    wanted.place = place;
    return addOutlet(site, wanted);
  };
  return std::make_unique<PlaceTool>(canvas, "map.hint.outlet", make);
}

}  // namespace cordreach::app
