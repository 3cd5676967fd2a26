// SPDX-License-Identifier: GPL-3.0-or-later
// Heat given off by a horizontal cylinder in still air, by convection and by radiation.
//   Ra = g (1/T_f) |T_s - T_a| D^3 / (nu alpha) at the film temperature T_f = (T_s + T_a)/2;  h = Nu k / D
//   Morgan 1975: Nu = C Ra^n in five bands, 1e-10 <= Ra <= 1e12: the central law for cords (Ra 300 to 4000).
//   Churchill and Chu 1975: Nu = {0.60 + 0.387 Ra^(1/6) / [1+(0.559/Pr)^(9/16)]^(8/27)}^2, Ra <= 1e12: 9 to 18 % lower
//   there, the cautious law. Laminar form, Ra < 1e9: Nu = 0.36 + 0.518 Ra^(1/4) / [1+(0.559/Pr)^(9/16)]^(4/9).
//   Radiation to surroundings at T_a: h = eps sigma (T_s^2 + T_a^2)(T_s + T_a).
#pragma once

#include "physics/air.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::physics {

enum class ConvectionLaw { Morgan, ChurchillChu };

[[nodiscard]] double rayleigh(units::Length diameter, units::Temperature surface, units::Temperature air);
[[nodiscard]] double nusseltMorgan(double rayleigh);
[[nodiscard]] double nusseltChurchillChu(double rayleigh, double prandtl);
[[nodiscard]] double nusseltChurchillChuLaminar(double rayleigh, double prandtl);

[[nodiscard]] double convectionWPerM2K(ConvectionLaw law, units::Length diameter, units::Temperature surface,
                                       units::Temperature air);
// Of a grey surface at its emissivity; the surroundings are large and as warm as the air.
[[nodiscard]] double radiationWPerM2K(double emissivity, units::Temperature surface, units::Temperature air);

}  // namespace cordreach::physics
