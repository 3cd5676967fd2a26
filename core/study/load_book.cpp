// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/load_book.h"

#include <algorithm>

#include "physics/load_model.h"
#include "physics/load_nameplate.h"
#include "study/assumptions.h"
#include "study/machine_plate.h"
#include "study/pad_in_use.h"

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

}  // namespace

std::shared_ptr<const physics::LoadLaw> LoadBook::remember(Key key, std::shared_ptr<const physics::LoadLaw> law) {
  return m_laws.emplace(std::move(key), std::move(law)).first->second;
}

std::shared_ptr<const physics::LoadLaw> LoadBook::lawOf(const site::Hookup& hookup, units::Voltage nominal,
                                                        Corner corner) {
  physics::Nameplate plate = nameplateOf(m_site, hookup, nominal);
  plate.torqueFactor = dragAt(padDragOf(m_site, hookup, plate).factor, corner);
  Key key{hookup.machine.text(), hookup.inlet, plate.torqueFactor, nominal.in(volt)};
  if (const auto known = m_laws.find(key); known != m_laws.end()) return known->second;
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
