// SPDX-License-Identifier: GPL-3.0-or-later
// A machine of the first kind; its properties say which it really is.
#include "map/tool_place.h"
#include "panels/machine_types.h"
#include "panels/new_things.h"

namespace cordreach::app {

std::unique_ptr<MapTool> machineTool(MapCanvas& canvas) {
  const auto make = [&book = canvas.session().book](const site::Site& site, const site::Place& place) -> EditResult {
    NewMachine wanted;
    wanted.type = machineTypes().front().id;
    wanted.name = book.say("machine_type." + wanted.type);
    wanted.place = place;
    return addMachine(site, wanted);
  };
  return std::make_unique<PlaceTool>(canvas, "map.hint.machine", make);
}

}  // namespace cordreach::app
