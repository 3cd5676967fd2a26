// SPDX-License-Identifier: GPL-3.0-or-later
// The main breakers of panels by moments: everything behind a panel that can be on is on, as for a circuit.
#pragma once

#include <vector>

#include "site/site.h"
#include "study/answer.h"
#include "study/panel_states.h"

namespace cordreach::study {

// Those that trip within a moment, by the likely or the earliest curve, each at its worst moment.
[[nodiscard]] std::vector<MainAnswer> mainsOf(const site::Site& site, const PanelStates& states);

}  // namespace cordreach::study
