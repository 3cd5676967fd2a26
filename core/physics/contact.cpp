// SPDX-License-Identifier: GPL-3.0-or-later
// Power and rise of a plug pair.
#include "physics/contact.h"

#include <algorithm>
#include <cmath>

#include "tables/table.h"

namespace cordreach::physics {
namespace {

double plugConstant(const char* id) { return tables::table("heat_plug").at(id).number("value"); }

units::Resistance classResistance(ContactClass contact, Corner corner) {
  const char* row = contact == ContactClass::Healthy ? "healthy" : contact == ContactClass::Worn ? "worn" : "failing";
  const char* column = corner == Corner::Low    ? "resistance_low"
                       : corner == Corner::High ? "resistance_high"
                                                : "resistance_likely";
  return tables::table("heat_contacts").at(row).number(column) * units::ohm;
}

double glowV() {
  static const double volts = plugConstant("glow_voltage");
  return volts;
}

units::Power contactPower(units::Resistance contact, units::Current rms) {
  return resistanceAt(contact, rms) * rms * rms;
}

}  // namespace

PlugContacts contactsOf(ContactClass contact, Corner corner) {
  const bool bothAlike = contact != ContactClass::Failing;
  return {classResistance(contact, corner), classResistance(bothAlike ? contact : ContactClass::Healthy, corner)};
}

units::Resistance resistanceAt(units::Resistance contact, units::Current rms) {
  if (rms * contact <= glowV() * units::volt) return contact;
  return glowV() * units::volt / rms;
}

units::ThermalConductance cordFin(units::WireSize size) {
  const double pairM2 = 2.0 * size.area().si();
  return units::ThermalConductance::fromSi(
      std::sqrt(plugConstant("copper_conductivity") * pairM2 / plugConstant("cord_resistance")));
}

namespace {

units::ThermalConductance plugConductance(units::WireSize size) {
  return 2.0 * cordFin(size) + plugConstant("body_conductance") * units::wattPerKelvin;
}

}  // namespace

ContactHeat contactHeat(units::WireSize size, units::Resistance line, units::Resistance neutral, units::Current rms) {
  const units::Power power = contactPower(line, rms) + contactPower(neutral, rms);
  return {power, power / plugConductance(size)};
}

ContactBand contactHeat(units::WireSize size, ContactClass contact, units::Current rms) {
  const auto at = [&](Corner corner) {
    const PlugContacts contacts = contactsOf(contact, corner);
    return contactHeat(size, contacts.line, contacts.neutral, rms);
  };
  return {at(Corner::Low), at(Corner::Likely), at(Corner::High)};
}

units::Duration plugTimeConstant(units::WireSize size) {
  return units::Duration::fromSi(plugConstant("body_capacity") / plugConductance(size).in(units::wattPerKelvin));
}

units::TemperatureRise plugRiseLimit() { return plugConstant("rise_limit") * units::kelvin; }
units::TemperatureRise plugRiseLimitIec() { return plugConstant("rise_limit_iec") * units::kelvin; }

}  // namespace cordreach::physics
