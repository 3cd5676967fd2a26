// SPDX-License-Identifier: GPL-3.0-or-later
// A plug in its receptacle: two live contacts that heat two pairs of wires acting as fins, and the plug's body.
//   P = 2 I^2 R_c;   dT = P / (2 G + G_body),   G = sqrt(k A / R_th) of the two conductors on one side of the plug
// A contact's voltage is held at 2.33 V, that of a glowing joint (35 W at 15 A). Only one of two contacts fails at a
// time. Range: within a factor of two; the figure is of the whole plug, a glowing spot is hundreds of kelvin hotter.
#pragma once

#include "physics/cord_section.h"
#include "units/quantity.h"
#include "units/wire_size.h"

namespace cordreach::physics {

enum class ContactClass { Healthy, Worn, Failing };

// One way each: what a cord's line and neutral meet at its plug.
struct PlugContacts {
  units::Resistance line;
  units::Resistance neutral;
};

// Of a class at one end of its band; only one of two contacts fails at a time, here the line's.
[[nodiscard]] PlugContacts contactsOf(ContactClass contact, Corner corner = Corner::Likely);

// What a contact of that resistance offers that current: less than its own once its voltage is held.
[[nodiscard]] units::Resistance resistanceAt(units::Resistance contact, units::Current rms);

struct ContactHeat {
  units::Power power;  // of both contacts
  units::TemperatureRise rise;
};

struct ContactBand {
  ContactHeat low;
  ContactHeat likely;
  ContactHeat high;
};

// Of the plug at the end of a cord of that size, by the class's band of contact resistance.
[[nodiscard]] ContactBand contactHeat(units::WireSize size, ContactClass contact, units::Current rms);
// Of a plug whose two contacts have those resistances.
[[nodiscard]] ContactHeat contactHeat(units::WireSize size, units::Resistance line, units::Resistance neutral,
                                      units::Current rms);

// How slowly a plug pair warms: its heat capacity over what it gives off. Own estimate, within a factor of two.
[[nodiscard]] units::Duration plugTimeConstant(units::WireSize size);

// What two conductors of a cord carry away on one side of a plug.
[[nodiscard]] units::ThermalConductance cordFin(units::WireSize size);

[[nodiscard]] units::TemperatureRise plugRiseLimit();     // at rated current; UL 498 and UL 817, from memory
[[nodiscard]] units::TemperatureRise plugRiseLimitIec();  // IEC 60884-1, from memory

}  // namespace cordreach::physics
