// SPDX-License-Identifier: GPL-3.0-or-later
// The smallest building in which a question about one cord can be asked: a panel, a circuit, an outlet, a machine.
#pragma once

#include "planning/cord_choice.h"

namespace cordreach::planning {

// With the extension between outlet and machine, or without one, on a breaker of that rating.
[[nodiscard]] site::Site cordSite(const CordQuestion& question, units::Current breaker, const site::Cord* extension);

// Of the one hookup in it.
[[nodiscard]] const site::HookupId& cordSiteHookup();

}  // namespace cordreach::planning
