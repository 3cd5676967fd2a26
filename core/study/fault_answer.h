// SPDX-License-Identifier: GPL-3.0-or-later
// Faults at the end of each cord of a hookup, in the wiring and through the cords that the document has.
#pragma once

#include "site/site.h"
#include "study/answer.h"
#include "study/panel_states.h"

namespace cordreach::study {

// Adds to each cord of the hookup's answer the fault at its end, in the state of its worst moment. A breaker that
// nobody knows is taken as 20 A; one that may not act clears nothing; of a generator or an inverter nothing is claimed.
void addFaults(const site::Site& site, const PanelStates& states, HookupAnswer& answer);

}  // namespace cordreach::study
