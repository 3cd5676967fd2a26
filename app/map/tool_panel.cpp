// SPDX-License-Identifier: GPL-3.0-or-later
// A panel on the first supply.
#include "map/tool_place.h"
#include "panels/new_things.h"

namespace cordreach::app {

std::unique_ptr<MapTool> panelTool(MapCanvas& canvas) {
  const auto make = [](const site::Site& site, const site::Place& place) -> EditResult {
    NewPanel wanted;
    wanted.name = QString::number(site.all<site::Panel>().size() + 1).toStdString() + "A";
    wanted.place = place;
    return addPanel(site, wanted);
  };
  return std::make_unique<PlaceTool>(canvas, "map.hint.panel", make);
}

}  // namespace cordreach::app
