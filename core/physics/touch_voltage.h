// SPDX-License-Identifier: GPL-3.0-or-later
// The volts between a failed machine's frame and the ground, and for how long.
//   earth whole:  U_t = U0 |Z_PE| / |Z_L + Z_PE|, half of U0 when both are alike, until a device acts
//   earth broken: U_t = U0, no current flows but through whoever touches it, no overcurrent device ever acts; only a
//                 ground-fault device does, when that current reaches 6 mA, within (20 mA/I)^1.43 s
// Range: a frame that touches nothing else; the return counts up to the source's earth, the cautious end.
#pragma once

#include <optional>

#include "physics/fault_loop.h"
#include "units/quantity.h"

namespace cordreach::physics {

[[nodiscard]] units::Voltage touchVoltage(units::Voltage toEarth, const FaultLoop& loop);

// The longest that somebody is left at a live frame behind a class A device: at the smallest current that it must act
// on (5.6 s at 6 mA; more current, less time).
[[nodiscard]] units::Duration longestShockBehindDevice();

}  // namespace cordreach::physics
