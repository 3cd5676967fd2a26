// SPDX-License-Identifier: GPL-3.0-or-later
// The steps of making a floor's content. For map_content.cpp only.
#pragma once

#include "map/map_content.h"

namespace cordreach::app {

[[nodiscard]] inline QPointF toPoint(const geometry::Point& point) { return {point.xM, point.yM}; }

[[nodiscard]] int indexOfOutlet(const MapContent& content, const site::OutletId& id);

void addGround(MapContent& content, const ContentWish& wish);    // rooms and walls
void addOutlets(MapContent& content, const ContentWish& wish);   // after the walls
void addWiring(MapContent& content, const ContentWish& wish);    // runs, panels and fixed loads, after the outlets
void addMachines(MapContent& content, const ContentWish& wish);  // and their cords, after the outlets

}  // namespace cordreach::app
