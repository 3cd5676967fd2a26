// SPDX-License-Identifier: GPL-3.0-or-later
// Comparing the copper of two cords across gauge and metric sizes.
#pragma once

#include "units/wire_size.h"

namespace cordreach::rules {

// Clearly less copper; 2 mm² against 14 AWG is not.
[[nodiscard]] bool isLighter(const units::WireSize& size, const units::WireSize& than);

// One stock size more at least: two gauge numbers, or the next metric size.
[[nodiscard]] bool isSizeHeavier(const units::WireSize& size, const units::WireSize& than);

}  // namespace cordreach::rules
