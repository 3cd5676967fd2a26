// SPDX-License-Identifier: GPL-3.0-or-later
// What the leakage that adds up on a ground-fault device comes to.
#pragma once

#include "physics/ground_fault.h"
#include "rules/finding_builder.h"

namespace cordreach::rules {

// Devices that answer their likely sum so.
[[nodiscard]] Findings leakagesThat(physics::GroundFaultAnswer answer, const Case& in, const Rule& rule);

}  // namespace cordreach::rules
