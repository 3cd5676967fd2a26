// SPDX-License-Identifier: GPL-3.0-or-later
// Steady state of the ladder: heat made and heat lost as functions of the surface's temperature, met by bracketing.
#include "physics/cord_ladder.h"

#include <cmath>

#include "tables/table.h"

namespace cordreach::physics {
namespace {

constexpr double kReferenceC = 20.0;  // of ohmPerM20 and alphaPerK

}  // namespace

units::Temperature beyondModelTemperature() {
  static const double limitC = tables::table("heat_constants").at("limit.beyond_model").number("value");
  return units::Temperature::fromCelsius(limitC);
}

std::optional<HeatResult> steadyOf(const CordLadder& ladder, units::Current rms, units::Temperature air) {
  const double source20 = rms.si() * rms.si() * ladder.ohmPerM20;
  // From node 0 to the surface: all heat passes R2s, only the share s passes R01 and R12.
  const double inner = ladder.sourceShare * (ladder.resistance01 + ladder.resistance12) + ladder.resistance2s;
  const double feedback = 1.0 - source20 * inner * ladder.alphaPerK;
  if (feedback <= 0.0) return std::nullopt;
  const auto conductorC = [&](double surfaceC) {
    return (surfaceC + source20 * inner * (1.0 - ladder.alphaPerK * kReferenceC)) / feedback;
  };
  const auto shortfall = [&](double surfaceC) {
    const double made = source20 * (1.0 + ladder.alphaPerK * (conductorC(surfaceC) - kReferenceC));
    return ladder.surface.lossWPerM(units::Temperature::fromCelsius(surfaceC), air) - made;
  };
  // Below this surface temperature the conductor is within the model.
  const double limitC = beyondModelTemperature().celsius();
  double low = air.celsius();
  double high = limitC * feedback - source20 * inner * (1.0 - ladder.alphaPerK * kReferenceC);
  if (high <= low) return std::nullopt;
  double atLow = shortfall(low);
  double atHigh = shortfall(high);
  if (atHigh < 0.0) return std::nullopt;
  // The Illinois variant of false position: the loss bends upwards, so the plain one creeps from one side.
  double at = low;
  int side = 0;
  for (int step = 0; step < 100 && high - low > 1e-9 && atLow < 0.0; ++step) {
    at = low + (high - low) * atLow / (atLow - atHigh);
    const double there = shortfall(at);
    if (std::abs(there) < 1e-10) break;
    if (there > 0.0) {
      high = at;
      atHigh = there;
      if (side == 1) atLow /= 2.0;
      side = 1;
    } else {
      low = at;
      atLow = there;
      if (side == -1) atHigh /= 2.0;
      side = -1;
    }
  }
  return HeatResult{units::Temperature::fromCelsius(conductorC(at)), units::Temperature::fromCelsius(at)};
}

}  // namespace cordreach::physics
