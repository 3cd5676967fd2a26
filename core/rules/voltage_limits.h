// SPDX-License-Identifier: GPL-3.0-or-later
// The volts a machine is made for.
#pragma once

#include "site/equipment.h"

namespace cordreach::rules {

struct VoltageLimits {
  units::Voltage plate;
  units::Voltage low;
  units::Voltage high;
};

// About the plate's volts; without a plate 115 V on a 120 V system and the nominal volts elsewhere.
[[nodiscard]] VoltageLimits voltageLimitsOf(const site::Inlet& inlet, units::Voltage nominal, double fraction);

}  // namespace cordreach::rules
