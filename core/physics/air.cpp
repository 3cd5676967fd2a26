// SPDX-License-Identifier: GPL-3.0-or-later
// Sutherland's law twice and the ideal gas.
#include "physics/air.h"

#include <cmath>

namespace cordreach::physics {

AirProperties airAt(units::Temperature film) {
  constexpr double kReferenceK = 273.15;
  constexpr double kSpecificHeat = 1006.0;
  const double T = film.kelvin();
  const double ratio = T / kReferenceK;
  const double power = ratio * std::sqrt(ratio);
  const double density = 101325.0 / (287.05 * T);
  const double conductivity = 0.02414 * power * (kReferenceK + 194.0) / (T + 194.0);
  const double viscosity = 1.716e-5 * power * (kReferenceK + 110.4) / (T + 110.4);
  return {conductivity, viscosity / density, conductivity / (density * kSpecificHeat)};
}

}  // namespace cordreach::physics
