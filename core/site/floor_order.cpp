// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/floor_order.h"

#include <algorithm>

namespace cordreach::site {

std::vector<const Floor*> floorsByLevel(const Site& site) {
  std::vector<const Floor*> floors;
  for (const Floor& floor : site.all<Floor>()) floors.push_back(&floor);
  std::ranges::stable_sort(floors, {}, &Floor::level);
  return floors;
}

}  // namespace cordreach::site
