// SPDX-License-Identifier: GPL-3.0-or-later
// Pad friction to torque, power and amps.
#include "physics/pad_drag.h"

#include <numbers>
#include <string>

#include "base/contract.h"
#include "physics/load_rectified.h"
#include "tables/table.h"

namespace cordreach::physics {

units::Length effectivePadRadius(units::Length outer, units::Length inner) {
  CORDREACH_EXPECTS(inner.si() >= 0.0 && inner < outer);
  return 2.0 / 3.0 * (outer * outer * outer - inner * inner * inner) / (outer * outer - inner * inner);
}

units::Length cuppedPadRadius(units::Length outer) { return effectivePadRadius(outer, kCupInnerShare * outer); }

units::Torque padTorque(double friction, units::Force pressure, units::Length effectiveRadius) {
  return friction * (pressure * effectiveRadius);
}

units::Power padPower(units::Torque torque, double speedRpm) {
  return units::Power::fromSi(torque.si() * speedRpm * std::numbers::pi / 30.0);
}

base::Result<PadFriction> padFriction(std::string_view task) {
  const tables::Row* row = tables::table("pad_friction").find(task);
  if (row == nullptr) return base::Error{"pad.unknown_task", std::string(task), {}};
  return PadFriction{row->number("friction_low"), row->number("friction_likely"), row->number("friction_high")};
}

units::Current burnisherAmps(const PadMotor& motor, units::Torque padTorque) {
  return units::Current::fromSi(kLineRmsPerDcAmp * (padTorque + motor.lossTorque).si() / motor.constantVsPerRad);
}

units::Torque torqueFromAmps(const PadMotor& motor, units::Current lineCurrent) {
  return units::Torque::fromSi(lineCurrent.si() * motor.constantVsPerRad / kLineRmsPerDcAmp) - motor.lossTorque;
}

}  // namespace cordreach::physics
