// SPDX-License-Identifier: GPL-3.0-or-later
// The outside of one metre of cord or hank: heat to the air by convection and radiation, or through a fixed resistance
// (a rug).   q' = pi D [f_c h_c + f_r h_r] (T_s - T_a) × scale,   or   q' = (T_s - T_a) / R × scale
// The factors stand for the part of the surface that a floor or neighbouring turns keep from the air.
#pragma once

#include <optional>

#include "physics/cord_convection.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::physics {

struct CordSurface {
  units::Length diameter;
  ConvectionLaw law = ConvectionLaw::Morgan;
  double convectionFactor = 1.0;
  double radiationFactor = 1.0;
  double emissivity = 1.0;
  std::optional<units::ThermalResistanceLength> throughCover;  // instead of air
  double scale = 1.0;                                          // from a measured jacket temperature

  struct Loss {
    double heatWPerM;    // given off; 0 at the air's temperature, negative below it
    double slopeWPerMK;  // by the surface's temperature, good enough to steer Newton's method and a Rosenbrock step
  };
  [[nodiscard]] Loss lossAt(units::Temperature surface, units::Temperature air) const;
  // The heat alone; it grows with the surface's temperature.
  [[nodiscard]] double lossWPerM(units::Temperature surface, units::Temperature air) const {
    return lossAt(surface, air).heatWPerM;
  }
  [[nodiscard]] double slopeWPerMK(units::Temperature surface, units::Temperature air) const {
    return lossAt(surface, air).slopeWPerMK;
  }
};

// The surface's temperature when heat reaches it from `inside` through `inner` (0 or more, K m/W). `near`: where it was
// a moment ago, which only saves steps.
[[nodiscard]] units::Temperature surfaceTemperature(const CordSurface& surface, units::Temperature inside, double inner,
                                                    units::Temperature air,
                                                    std::optional<units::Temperature> near = std::nullopt);

}  // namespace cordreach::physics
