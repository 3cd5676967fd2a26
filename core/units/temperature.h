// SPDX-License-Identifier: GPL-3.0-or-later
// Absolute temperature, apart from a rise: two temperatures can be subtracted, never added.
#pragma once

#include <compare>

#include "units/quantity.h"

namespace cordreach::units {

class Temperature {
 public:
  [[nodiscard]] static constexpr Temperature fromKelvin(double value) { return Temperature(value); }
  [[nodiscard]] static constexpr Temperature fromCelsius(double value) { return Temperature(value + kZeroCelsius); }
  [[nodiscard]] static constexpr Temperature fromFahrenheit(double value) { return fromCelsius((value - 32.0) / 1.8); }
  [[nodiscard]] constexpr double kelvin() const { return m_kelvin; }
  [[nodiscard]] constexpr double celsius() const { return m_kelvin - kZeroCelsius; }
  [[nodiscard]] constexpr double fahrenheit() const { return celsius() * 1.8 + 32.0; }

  friend constexpr bool operator==(const Temperature&, const Temperature&) = default;
  friend constexpr auto operator<=>(const Temperature&, const Temperature&) = default;
  friend constexpr TemperatureRise operator-(Temperature a, Temperature b) {
    return TemperatureRise::fromSi(a.m_kelvin - b.m_kelvin);
  }
  friend constexpr Temperature operator+(Temperature a, TemperatureRise b) { return Temperature(a.m_kelvin + b.si()); }
  friend constexpr Temperature operator-(Temperature a, TemperatureRise b) { return Temperature(a.m_kelvin - b.si()); }

 private:
  static constexpr double kZeroCelsius = 273.15;  // exact, SI brochure
  explicit constexpr Temperature(double kelvin) : m_kelvin(kelvin) {}
  double m_kelvin;
};

}  // namespace cordreach::units
