// SPDX-License-Identifier: GPL-3.0-or-later
// When an overcurrent device cuts off a fault whose current falls as the cord warms: the instantaneous part on the
// first half cycles, else the thermal replica carried along the fault's current, warm from what flowed before.
// Range: that of the breaker curves; a device that is known not to act has no clearing and is not asked here.
#pragma once

#include <optional>

#include "physics/breaker_trip.h"
#include "physics/fault_heat.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::physics {

struct OvercurrentDevice {
  Breaker breaker;
  BreakerAir air;
  units::Current carrying;  // before the fault, long enough to have warmed it
};

// None: never. Beyond the heating's last point its last current flows on.
[[nodiscard]] std::optional<units::Duration> clearingTime(const OvercurrentDevice& device, TripCurve curve,
                                                          const FaultHeat& heat);

}  // namespace cordreach::physics
