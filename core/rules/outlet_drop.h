// SPDX-License-Identifier: GPL-3.0-or-later
// The advisories for volts lost in the building's wiring. They end at the outlet, never through cords.
#pragma once

#include "rules/finding_builder.h"

namespace cordreach::rules {

// A finding a contact in use whose drop is above the rule's per cent of nominal: the drop is that member of the answer.
[[nodiscard]] Findings outletsThatDrop(units::Voltage study::HookupAnswer::*drop, const Case& in, const Rule& rule);

}  // namespace cordreach::rules
