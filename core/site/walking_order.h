// SPDX-License-Identifier: GPL-3.0-or-later
// The order in which somebody who walks the building with a sheet in hand comes past its outlets.
#pragma once

#include <vector>

#include "site/site.h"

namespace cordreach::site {

// A plain rule, not a shortest way. Floor by floor from the lowest up. On a floor it begins at the outlet next to the
// first panel there (by name), without a panel at the lowest number. A room is finished before it is left; along a
// corridor, and out of a finished room, the next is the nearest, walls not looked at, by the distance along two right
// angles; of two as near, the lower number. Outlets without a place come last, by room and number.
[[nodiscard]] std::vector<OutletId> walkingOrder(const Site& site);

}  // namespace cordreach::site
