// SPDX-License-Identifier: GPL-3.0-or-later
// Physical quantities: a double in SI with its dimension in the type, so a length can't be passed where a current
// belongs. Made as `75.0 * foot`, read as `length.in(foot)`. Absolute temperature is another type: temperature.h.
#pragma once

#include <compare>

namespace cordreach::units {

// Exponents of metre, kilogram, second, ampere, kelvin.
template <int M, int Kg, int S, int A, int K>
class Quantity {
 public:
  constexpr Quantity() = default;
  [[nodiscard]] static constexpr Quantity fromSi(double value) { return Quantity(value); }
  [[nodiscard]] constexpr double si() const { return m_si; }
  [[nodiscard]] constexpr double in(Quantity unit) const { return m_si / unit.m_si; }

  friend constexpr bool operator==(const Quantity&, const Quantity&) = default;
  friend constexpr auto operator<=>(const Quantity&, const Quantity&) = default;

  friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity(a.m_si + b.m_si); }
  friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity(a.m_si - b.m_si); }
  friend constexpr Quantity operator-(Quantity a) { return Quantity(-a.m_si); }
  friend constexpr Quantity operator*(Quantity a, double b) { return Quantity(a.m_si * b); }
  friend constexpr Quantity operator*(double a, Quantity b) { return Quantity(a * b.m_si); }
  friend constexpr Quantity operator/(Quantity a, double b) { return Quantity(a.m_si / b); }
  constexpr Quantity& operator+=(Quantity b) { return *this = *this + b; }
  constexpr Quantity& operator-=(Quantity b) { return *this = *this - b; }

 private:
  explicit constexpr Quantity(double si) : m_si(si) {}
  double m_si = 0.0;
};

// A product or quotient without dimension is a plain double.
template <int M, int Kg, int S, int A, int K>
[[nodiscard]] constexpr auto quantityOrNumber(double si) {
  if constexpr (M == 0 && Kg == 0 && S == 0 && A == 0 && K == 0) {
    return si;
  } else {
    return Quantity<M, Kg, S, A, K>::fromSi(si);
  }
}

template <int M1, int Kg1, int S1, int A1, int K1, int M2, int Kg2, int S2, int A2, int K2>
constexpr auto operator*(Quantity<M1, Kg1, S1, A1, K1> a, Quantity<M2, Kg2, S2, A2, K2> b) {
  return quantityOrNumber<M1 + M2, Kg1 + Kg2, S1 + S2, A1 + A2, K1 + K2>(a.si() * b.si());
}

template <int M1, int Kg1, int S1, int A1, int K1, int M2, int Kg2, int S2, int A2, int K2>
constexpr auto operator/(Quantity<M1, Kg1, S1, A1, K1> a, Quantity<M2, Kg2, S2, A2, K2> b) {
  return quantityOrNumber<M1 - M2, Kg1 - Kg2, S1 - S2, A1 - A2, K1 - K2>(a.si() / b.si());
}

template <int M, int Kg, int S, int A, int K>
constexpr auto operator/(double a, Quantity<M, Kg, S, A, K> b) {
  return quantityOrNumber<-M, -Kg, -S, -A, -K>(a / b.si());
}

using Length = Quantity<1, 0, 0, 0, 0>;
using Area = Quantity<2, 0, 0, 0, 0>;
using Volume = Quantity<3, 0, 0, 0, 0>;
using Mass = Quantity<0, 1, 0, 0, 0>;
using Duration = Quantity<0, 0, 1, 0, 0>;
using Frequency = Quantity<0, 0, -1, 0, 0>;  // hertz; also angular speed in radians per second
using Current = Quantity<0, 0, 0, 1, 0>;
using TemperatureRise = Quantity<0, 0, 0, 0, 1>;
using Force = Quantity<1, 1, -2, 0, 0>;
using Torque = Quantity<2, 1, -2, 0, 0>;  // same dimension as energy
using Power = Quantity<2, 1, -3, 0, 0>;
using Voltage = Quantity<2, 1, -3, -1, 0>;
using Resistance = Quantity<2, 1, -3, -2, 0>;
using Resistivity = Quantity<3, 1, -3, -2, 0>;
using ResistancePerLength = Quantity<1, 1, -3, -2, 0>;
using HeatPerLength = Quantity<1, 1, -3, 0, 0>;             // watts per metre of cord
using ThermalResistanceLength = Quantity<-1, -1, 3, 0, 1>;  // kelvin metre per watt
using HeatCapacityPerLength = Quantity<1, 1, -2, 0, -1>;    // joules per metre and kelvin
using ThermalConductance = Quantity<2, 1, -3, 0, -1>;       // watts per kelvin

inline constexpr Length metre = Length::fromSi(1.0);
inline constexpr Length millimetre = Length::fromSi(1e-3);
inline constexpr Length foot = Length::fromSi(0.3048);  // exact, international yard and pound agreement 1959
inline constexpr Length inch = Length::fromSi(0.0254);  // exact, same
inline constexpr Area squareMetre = Area::fromSi(1.0);
inline constexpr Area squareMillimetre = Area::fromSi(1e-6);
inline constexpr Mass kilogram = Mass::fromSi(1.0);
inline constexpr Duration second = Duration::fromSi(1.0);
inline constexpr Duration minute = Duration::fromSi(60.0);
inline constexpr Duration hour = Duration::fromSi(3600.0);
inline constexpr Frequency hertz = Frequency::fromSi(1.0);
inline constexpr Current ampere = Current::fromSi(1.0);
inline constexpr Current milliampere = Current::fromSi(1e-3);
inline constexpr Voltage volt = Voltage::fromSi(1.0);
inline constexpr Resistance ohm = Resistance::fromSi(1.0);
inline constexpr Resistivity ohmMetre = Resistivity::fromSi(1.0);
inline constexpr ResistancePerLength ohmPerMetre = ResistancePerLength::fromSi(1.0);
inline constexpr ResistancePerLength ohmPerKilometre = ResistancePerLength::fromSi(1e-3);
inline constexpr Power watt = Power::fromSi(1.0);
inline constexpr Power horsepower = Power::fromSi(745.699871582270);  // 550 ft lbf/s, exact inputs
inline constexpr Force newton = Force::fromSi(1.0);
inline constexpr Torque newtonMetre = Torque::fromSi(1.0);
inline constexpr TemperatureRise kelvin = TemperatureRise::fromSi(1.0);
inline constexpr HeatPerLength wattPerMetre = HeatPerLength::fromSi(1.0);
inline constexpr ThermalResistanceLength kelvinMetrePerWatt = ThermalResistanceLength::fromSi(1.0);
inline constexpr HeatCapacityPerLength joulePerMetreKelvin = HeatCapacityPerLength::fromSi(1.0);
inline constexpr ThermalConductance wattPerKelvin = ThermalConductance::fromSi(1.0);

}  // namespace cordreach::units
