// SPDX-License-Identifier: GPL-3.0-or-later
// The balance at the jacket's surface.
#include "physics/cord_surface.h"

#include <cmath>
#include <numbers>

namespace cordreach::physics {
namespace {

struct Loss {
  double heatWPerM;
  double slopeWPerMK;
};

Loss lossAt(const CordSurface& surface, units::Temperature at, units::Temperature air) {
  const double riseK = (at - air).si();
  if (surface.throughCover) {
    const double conductance = surface.scale / surface.throughCover->si();
    return {conductance * riseK, conductance};
  }
  const double around = std::numbers::pi * surface.diameter.si() * surface.scale;
  const double convection = surface.convectionFactor * convectionWPerM2K(surface.law, surface.diameter, at, air);
  const double radiation = surface.radiationFactor * radiationWPerM2K(surface.emissivity, at, air);
  // Nu goes with about Ra^0.19 in the cords' band, so h_c dT has 1.19 times the slope of a constant h_c.
  constexpr double kConvectionSlope = 1.19;
  const double radiationSlope = 1.0 + riseK * 1.5 / at.kelvin();
  return {around * (convection + radiation) * riseK,
          around * (kConvectionSlope * convection + radiationSlope * radiation)};
}

}  // namespace

double CordSurface::lossWPerM(units::Temperature surface, units::Temperature air) const {
  return lossAt(*this, surface, air).heatWPerM;
}

double CordSurface::slopeWPerMK(units::Temperature surface, units::Temperature air) const {
  return lossAt(*this, surface, air).slopeWPerMK;
}

units::Temperature surfaceTemperature(const CordSurface& surface, units::Temperature inside, double inner,
                                      units::Temperature air) {
  if (inner <= 0.0) return inside;
  constexpr double kToleranceK = 1e-7;
  constexpr int kMaxSteps = 60;
  units::Temperature low = inside < air ? inside : air;
  units::Temperature high = inside < air ? air : inside;
  units::Temperature at = air + (inside - air) * 0.8;
  for (int step = 0; step < kMaxSteps; ++step) {
    const Loss loss = lossAt(surface, at, air);
    const double excess = loss.heatWPerM * inner - (inside - at).si();
    (excess > 0.0 ? high : low) = at;
    units::Temperature next = at - units::TemperatureRise::fromSi(excess / (loss.slopeWPerMK * inner + 1.0));
    if (next < low || next > high) next = low + (high - low) / 2.0;
    const double moved = std::abs((next - at).si());
    at = next;
    if (moved < kToleranceK) break;
  }
  return at;
}

}  // namespace cordreach::physics
