// SPDX-License-Identifier: GPL-3.0-or-later
// The edit that plugs the machine in as it was advised: its plug into the cord, the cord into the outlet.
#pragma once

#include <optional>

#include "desk/cord_inputs.h"
#include "planning/cord_choice.h"
#include "site/edit.h"

namespace cordreach::app {

// None: machine, outlet or cord is not of the site.
[[nodiscard]] std::optional<site::Edit> useCord(const CordInputs& inputs, const planning::CordCandidate& choice,
                                                const site::Site& site);

}  // namespace cordreach::app
