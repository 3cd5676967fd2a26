// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/machine_plate.h"

#include <algorithm>

#include "physics/load_model.h"
#include "study/assumptions.h"

namespace cordreach::study {

namespace {

using units::volt;

// Shaft power is one motor's; with several inlets nobody said whose.
std::optional<units::Power> shaftPowerOf(const site::Machine& machine) {
  if (machine.inlets.size() != 1 || !machine.shaftPower) return std::nullopt;
  return machine.shaftPower->value;
}

// Air movers and the like are marked by kind; their torque follows the square of speed.
physics::LoadModel modelOf(const site::Machine& machine, const site::Inlet& inlet) {
  if (inlet.loadClass == tables::LoadClass::Induction && machine.kind == "air-mover") {
    return physics::LoadModel::InductionFan;
  }
  return physics::modelFor(inlet.loadClass);
}

}  // namespace

const site::Inlet& inletOf(const site::Machine& machine, const std::string& name) {
  const auto at = std::find_if(machine.inlets.begin(), machine.inlets.end(),
                               [&](const site::Inlet& inlet) { return inlet.name == name; });
  CORDREACH_EXPECTS(at != machine.inlets.end());
  return *at;
}

units::Voltage plateVoltageOf(const site::Inlet& inlet, units::Voltage nominal) {
  if (inlet.plateVoltage) return inlet.plateVoltage->value;
  return nominal == 120.0 * volt ? 115.0 * volt : nominal;
}

physics::Nameplate nameplateOf(const site::Site& site, const site::Hookup& hookup, units::Voltage nominal) {
  const auto& machine = site.at<site::Machine>(hookup.machine);
  const auto& inlet = inletOf(machine, hookup.inlet);
  physics::Nameplate plate;
  plate.model = modelOf(machine, inlet);
  plate.voltage = plateVoltageOf(inlet, nominal);
  plate.current = plateOf(inlet);
  if (inlet.running) plate.runningCurrent = inlet.running->value;
  if (inlet.lockedRotor) plate.lockedRotorCurrent = inlet.lockedRotor->value;
  plate.shaftPower = shaftPowerOf(machine);
  if (machine.speed) plate.speedRpm = machine.speed->value.in(units::hertz)*60.0;
  return plate;
}

}  // namespace cordreach::study
