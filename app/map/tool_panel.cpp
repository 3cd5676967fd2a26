// SPDX-License-Identifier: GPL-3.0-or-later
// A panel that has no place yet, else a new one on the first supply.
#include "map/tool_place.h"
#include "panels/new_things.h"

namespace cordreach::app {

std::unique_ptr<MapTool> panelTool(MapCanvas& canvas) {
  const auto make = [](const site::Site& site, const site::Place& place) -> EditResult {
    for (const site::Panel& panel : site.all<site::Panel>()) {
      if (panel.place) continue;
      site::Panel placed = panel;  // one that is known, but not where it hangs
      placed.place = place;
      return site::Edit{"things.move", {site::Change<site::Panel>{panel, std::move(placed)}}};
    }
    NewPanel wanted;
    wanted.name = QString::number(site.all<site::Panel>().size() + 1).toStdString() + "A";
    wanted.place = place;
    return addPanel(site, wanted);
  };
  return std::make_unique<PlaceTool>(canvas, "map.hint.panel", make);
}

}  // namespace cordreach::app
