// SPDX-License-Identifier: GPL-3.0-or-later
// Where the volts go between the open-circuit source and a machine's terminals.
#pragma once

#include "rules/finding_builder.h"

namespace cordreach::rules {

// The parts of a hookup's drop as reasons with their share: "drop.source", "drop.building_wire", "drop.extension",
// "drop.own_cord". The cords' part is split between them by amps times length over copper.
void whyDrop(FindingBuilder& finding, const HookupCase& hookup);

}  // namespace cordreach::rules
