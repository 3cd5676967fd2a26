// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/voltage_limits.h"

namespace cordreach::rules {

namespace {

// ANSI C84.1: motors for 120 V systems are rated 115 V. Any nominal this near 120 V is such a system.
constexpr units::Voltage kMotorOn120 = 115.0 * units::volt;
constexpr units::Voltage kNear120Low = 110.0 * units::volt;
constexpr units::Voltage kNear120High = 127.0 * units::volt;

}  // namespace

VoltageLimits voltageLimitsOf(const site::Inlet& inlet, units::Voltage nominal, double fraction) {
  const bool on120 = nominal >= kNear120Low && nominal <= kNear120High;
  units::Voltage plate = on120 ? kMotorOn120 : nominal;
  if (inlet.plateVoltage) plate = inlet.plateVoltage->value;
  return {plate, plate * (1.0 - fraction), plate * (1.0 + fraction)};
}

}  // namespace cordreach::rules
