// SPDX-License-Identifier: GPL-3.0-or-later
// The first panel by name that has no place yet, else a new one on the first supply.
#include "map/tool_place.h"
#include "panels/new_things.h"
#include "site/natural_order.h"

namespace cordreach::app {
namespace {

const site::Panel* firstWithoutPlace(const site::Site& site) {
  const site::Panel* first = nullptr;
  for (const site::Panel& panel : site.all<site::Panel>()) {
    if (panel.place) continue;
    if (first == nullptr || site::comesBefore(panel.name, first->name)) first = &panel;
  }
  return first;
}

}  // namespace

std::unique_ptr<MapTool> panelTool(MapCanvas& canvas) {
  const auto make = [](const site::Site& site, const site::Place& place) -> EditResult {
    if (const site::Panel* known = firstWithoutPlace(site)) {
      site::Panel placed = *known;
      placed.place = place;
      return site::Edit{"things.move", {site::Change<site::Panel>{*known, std::move(placed)}}};
    }
    NewPanel wanted;
    wanted.name = QString::number(site.all<site::Panel>().size() + 1).toStdString() + "A";
    wanted.place = place;
    return addPanel(site, wanted);
  };
  return std::make_unique<PlaceTool>(canvas, "map.hint.panel", make);
}

}  // namespace cordreach::app
