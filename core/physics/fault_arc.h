// SPDX-License-Identifier: GPL-3.0-or-later
// A fault through an arc: it takes volts of its own, so that only 50 to 75 % of the bolted current flows and the
// breaker acts later or not at all. From memory; no model of the arc, a band.
#pragma once

#include "units/quantity.h"

namespace cordreach::physics {

struct ArcCurrent {
  units::Current low;
  units::Current high;
};

[[nodiscard]] ArcCurrent arcCurrent(units::Current bolted);

}  // namespace cordreach::physics
