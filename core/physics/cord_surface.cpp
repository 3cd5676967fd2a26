// SPDX-License-Identifier: GPL-3.0-or-later
// The balance at the jacket's surface.
#include "physics/cord_surface.h"

#include <cmath>
#include <numbers>

namespace cordreach::physics {

CordSurface::Loss CordSurface::lossAt(units::Temperature surface, units::Temperature air) const {
  const double riseK = (surface - air).si();
  if (throughCover) {
    const double conductance = scale / throughCover->si();
    return {conductance * riseK, conductance};
  }
  const double around = std::numbers::pi * diameter.si() * scale;
  const double convection = convectionFactor * convectionWPerM2K(law, diameter, surface, air);
  const double radiation = radiationFactor * radiationWPerM2K(emissivity, surface, air);
  // Nu goes with about Ra^0.19 in the cords' band, so h_c dT has 1.19 times the slope of a constant h_c.
  constexpr double kConvectionSlope = 1.19;
  const double radiationSlope = 1.0 + riseK * 1.5 / surface.kelvin();
  return {around * (convection + radiation) * riseK,
          around * (kConvectionSlope * convection + radiationSlope * radiation)};
}

units::Temperature surfaceTemperature(const CordSurface& surface, units::Temperature inside, double inner,
                                      units::Temperature air, std::optional<units::Temperature> near) {
  if (inner <= 0.0) return inside;
  // The step after one so small is far smaller still.
  constexpr double kSmallMoveK = 1e-5;
  constexpr int kMaxSteps = 60;
  units::Temperature low = inside < air ? inside : air;
  units::Temperature high = inside < air ? air : inside;
  units::Temperature at = near && *near > low && *near < high ? *near : air + (inside - air) * 0.8;
  double lastExcessK = 0.0;
  double movedK = 0.0;
  for (int step = 0; step < kMaxSteps; ++step) {
    const CordSurface::Loss loss = surface.lossAt(at, air);
    const double excessK = loss.heatWPerM * inner - (inside - at).si();
    (excessK > 0.0 ? high : low) = at;
    // The loss's own slope first, then the secant, which is the truer one.
    const double secant = step > 0 ? (excessK - lastExcessK) / movedK : 0.0;
    const double slope = secant > 0.0 ? secant : loss.slopeWPerMK * inner + 1.0;
    units::Temperature next = at - units::TemperatureRise::fromSi(excessK / slope);
    if (next < low || next > high) next = low + (high - low) / 2.0;
    lastExcessK = excessK;
    movedK = (next - at).si();
    at = next;
    if (std::abs(movedK) < kSmallMoveK) break;
  }
  return at;
}

}  // namespace cordreach::physics
