// SPDX-License-Identifier: GPL-3.0-or-later
// Extensions of the site that could be handed to a hookup: in service, whole, free in its hours, heavy enough.
#pragma once

#include <vector>

#include "planning/plug.h"

namespace cordreach::planning {

struct CordWish {
  units::Length length;      // at least
  std::string receptacle;    // its plug must fit this; empty: unknown
  bool groundFault = false;  // must bring its own ground-fault device
};

// Shortest first, then the lightest, then by label.
[[nodiscard]] std::vector<const site::Cord*> cordsFor(const Plugging& plugging, const site::Site& site,
                                                      const CordWish& wish);

// One stock size more than the machine's own; beside an own cord of 12 AWG or more, as much (own: little heavier is
// sold).
[[nodiscard]] bool heavyEnough(const units::WireSize& extension, const units::WireSize& own);

}  // namespace cordreach::planning
