// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/load_book.h"

#include <algorithm>

#include "physics/load_model.h"
#include "physics/load_nameplate.h"
#include "study/assumptions.h"

namespace cordreach::study {

namespace {

using units::volt;

// A plate that fits no model of its class (shaft power out of this world, say) still draws what it says.
std::shared_ptr<const physics::LoadLaw> lawFrom(physics::Nameplate plate) {
  auto law = physics::makeLoadLaw(plate);
  if (law) return std::move(law).value();
  plate.shaftPower.reset();
  plate.runningCurrent.reset();
  law = physics::makeLoadLaw(plate);
  if (law) return std::move(law).value();
  physics::Nameplate plain;
  plain.voltage = plate.voltage;
  plain.current = plate.current;
  return physics::makeLoadLaw(plain).value();
}

// Shaft power is one motor's; with several inlets nobody said whose.
std::optional<units::Power> shaftPowerOf(const site::Machine& machine) {
  if (machine.inlets.size() != 1 || !machine.shaftPower) return std::nullopt;
  return machine.shaftPower->value;
}

double torqueFactorOf(const site::Site& site, const site::Hookup& hookup) {
  if (!hookup.pad) return 1.0;
  const site::Pad* pad = site.find<site::Pad>(*hookup.pad);
  return pad != nullptr && pad->dragFactor ? pad->dragFactor->value : 1.0;
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

std::shared_ptr<const physics::LoadLaw> LoadBook::remember(Key key, std::shared_ptr<const physics::LoadLaw> law) {
  return m_laws.emplace(std::move(key), std::move(law)).first->second;
}

std::shared_ptr<const physics::LoadLaw> LoadBook::lawOf(const site::Hookup& hookup, units::Voltage nominal) {
  const double torque = torqueFactorOf(m_site, hookup);
  Key key{hookup.machine.text(), hookup.inlet, torque, nominal.in(volt)};
  if (const auto known = m_laws.find(key); known != m_laws.end()) return known->second;
  const auto& machine = m_site.at<site::Machine>(hookup.machine);
  const auto& inlet = inletOf(machine, hookup.inlet);
  physics::Nameplate plate;
  plate.model = modelOf(machine, inlet);
  plate.voltage = plateVoltageOf(inlet, nominal);
  plate.current = plateOf(inlet);
  if (inlet.running) plate.runningCurrent = inlet.running->value;
  plate.shaftPower = shaftPowerOf(machine);
  if (machine.speed) plate.speedRpm = machine.speed->value.in(units::hertz)*60.0;
  plate.torqueFactor = torque;
  return remember(std::move(key), lawFrom(plate));
}

std::shared_ptr<const physics::LoadLaw> LoadBook::lawOf(const site::FixedLoad& load, units::Voltage nominal) {
  Key key{load.id.text(), "", 1.0, nominal.in(volt)};
  if (const auto known = m_laws.find(key); known != m_laws.end()) return known->second;
  physics::Nameplate plate;
  plate.model = physics::modelFor(load.loadClass);
  plate.voltage = nominal;
  plate.current = currentOf(load);
  return remember(std::move(key), lawFrom(plate));
}

}  // namespace cordreach::study
