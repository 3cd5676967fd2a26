// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/touch_voltage.h"

#include <cmath>

#include "base/contract.h"
#include "physics/ground_fault.h"
#include "tables/table.h"

namespace cordreach::physics {

units::Voltage touchVoltage(units::Voltage toEarth, const FaultLoop& loop) {
  const double whole = std::abs(loop.ohm());
  CORDREACH_EXPECTS(whole > 0.0);
  return toEarth * (std::abs(loop.returnOhm) / whole);
}

units::Duration longestShockBehindDevice() {
  const double milliamperes = tables::table("breaker_ground_fault").at("must_trip").number("value");
  const auto time = groundFaultTripTime(milliamperes * units::milliampere);
  CORDREACH_EXPECTS(time.has_value());
  return *time;
}

}  // namespace cordreach::physics
