// SPDX-License-Identifier: GPL-3.0-or-later
// The floors of a building from the lowest to the highest.
#pragma once

#include <vector>

#include "site/site.h"

namespace cordreach::site {

// Of one level by id.
[[nodiscard]] std::vector<const Floor*> floorsByLevel(const Site& site);

}  // namespace cordreach::site
