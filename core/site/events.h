// SPDX-License-Identifier: GPL-3.0-or-later
// An event goes with the thing that it is about.
#pragma once

#include <vector>

#include "site/edit.h"

namespace cordreach::site {

// The removals that must go with the removal of a hookup or of an extension.
[[nodiscard]] std::vector<AnyChange> eventsGoneWith(const Site& site, const HookupId& id);
[[nodiscard]] std::vector<AnyChange> eventsGoneWith(const Site& site, const ExtensionUseId& id);

}  // namespace cordreach::site
