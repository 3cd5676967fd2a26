// SPDX-License-Identifier: GPL-3.0-or-later
// What can be done with things because there are several: put in line, spread, taken to another floor.
#pragma once

class QMenu;

namespace cordreach::app {

class MapCanvas;

void fillArrangeMenu(QMenu& menu, MapCanvas& canvas);

}  // namespace cordreach::app
