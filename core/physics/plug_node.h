// SPDX-License-Identifier: GPL-3.0-or-later
// A plug in its receptacle through time: one lump of plastic and brass, warmed by its two contacts and cooled by its
// body and by the wires of cord and wall as fins.
//   C dT/dt = P - (T - T_0)(2 G + G_body),   P = U_line I + U_neutral I,   U = min(R_c I, 2.33 V)
// T_0 is what it would be without the contacts. Exact over a time of constant current, as P does not depend on T.
// C 50 J/K (own estimate, within a factor of two), G and the glowing joint's 2.33 V as in contact.h. The volts are lost
// on the way too: they are the contact's part of a cord's resistance. Range: the whole plug, up to 300 °C; beyond that
// its plastic no longer exists. A glowing spot inside is hundreds of kelvin hotter than the figure.
#pragma once

#include <optional>

#include "physics/contact.h"
#include "units/quantity.h"
#include "units/temperature.h"
#include "units/wire_size.h"

namespace cordreach::physics {

class PlugNode {
 public:
  // `size`: the cord's, whose wires carry the heat away.
  PlugNode(units::WireSize size, PlugContacts contacts, units::Temperature around);

  // Carries that current for that long.
  void advance(units::Current rms, units::Duration duration);
  // After how long at that current it is warmer than what is around it by `rise`; none: not within the horizon.
  [[nodiscard]] std::optional<units::Duration> timeToRise(units::TemperatureRise rise, units::Current rms,
                                                          units::Duration horizon) const;
  // In the end.
  [[nodiscard]] units::TemperatureRise steadyRise(units::Current rms) const;

  [[nodiscard]] units::Temperature now() const { return m_around + m_rise; }
  [[nodiscard]] units::TemperatureRise rise() const { return m_rise; }
  // It was once hotter than anything its plastic outlives.
  [[nodiscard]] bool beyondModel() const { return m_beyond; }
  // Other air, or a cord that has warmed meanwhile.
  void changeSurroundings(units::Temperature around);

 private:
  units::WireSize m_size;
  PlugContacts m_contacts;
  units::Temperature m_around;
  units::TemperatureRise m_rise{};
  units::Duration m_timeConstant;
  bool m_beyond = false;
};

}  // namespace cordreach::physics
