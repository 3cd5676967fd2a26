// SPDX-License-Identifier: GPL-3.0-or-later
// What can be done with a thing of the map: its cord, how that lies, switches, pad. Each entry makes one edit.
#pragma once

#include "document/session.h"
#include "rules/finding.h"

class QMenu;

namespace cordreach::app {

class MapCanvas;

void fillMenu(QMenu& menu, MapCanvas& canvas, const rules::Subject& subject);

}  // namespace cordreach::app
