// SPDX-License-Identifier: GPL-3.0-or-later
// What the findings about a start tell alike: the machine, its amps as it starts and once it runs, and for how long.
#pragma once

#include "rules/finding_builder.h"

namespace cordreach::rules {

// The hookup's start must have been answered.
void aboutStart(FindingBuilder& finding, const HookupCase& hookup, const Case& in);

}  // namespace cordreach::rules
