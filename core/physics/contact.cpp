// SPDX-License-Identifier: GPL-3.0-or-later
// Power and rise of a plug pair.
#include "physics/contact.h"

#include <algorithm>
#include <cmath>

#include "tables/table.h"

namespace cordreach::physics {
namespace {

double plugConstant(const char* id) { return tables::table("heat_plug").at(id).number("value"); }

units::Resistance classResistance(ContactClass contact, const char* column) {
  const char* id = contact == ContactClass::Healthy ? "healthy" : contact == ContactClass::Worn ? "worn" : "failing";
  return tables::table("heat_contacts").at(id).number(column) * units::ohm;
}

units::Power contactPower(units::Resistance contact, units::Current rms) {
  const units::Voltage across = std::min(contact * rms, plugConstant("glow_voltage") * units::volt);
  return across * rms;
}

}  // namespace

units::ThermalConductance cordFin(units::WireSize size) {
  const double pairM2 = 2.0 * size.area().si();
  return units::ThermalConductance::fromSi(
      std::sqrt(plugConstant("copper_conductivity") * pairM2 / plugConstant("cord_resistance")));
}

ContactHeat contactHeat(units::WireSize size, units::Resistance line, units::Resistance neutral, units::Current rms) {
  const units::Power power = contactPower(line, rms) + contactPower(neutral, rms);
  const auto away = 2.0 * cordFin(size) + plugConstant("body_conductance") * units::wattPerKelvin;
  return {power, power / away};
}

ContactBand contactHeat(units::WireSize size, ContactClass contact, units::Current rms) {
  const auto at = [&](const char* column) {
    const units::Resistance line = classResistance(contact, column);
    const bool bothAlike = contact != ContactClass::Failing;
    return contactHeat(size, line, bothAlike ? line : classResistance(ContactClass::Healthy, column), rms);
  };
  return {at("resistance_low"), at("resistance_likely"), at("resistance_high")};
}

units::TemperatureRise plugRiseLimit() { return plugConstant("rise_limit") * units::kelvin; }
units::TemperatureRise plugRiseLimitIec() { return plugConstant("rise_limit_iec") * units::kelvin; }

}  // namespace cordreach::physics
