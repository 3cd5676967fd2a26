// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/fault_clearing.h"

#include <algorithm>

#include "base/contract.h"

namespace cordreach::physics {

namespace {

std::optional<units::Duration> thermalTime(const OvercurrentDevice& device, TripCurve curve, const FaultHeat& heat) {
  BreakerState state(device.breaker, curve, device.air.at(curve), device.carrying);
  if (state.tripped()) return units::Duration{};
  for (std::size_t i = 1; i < heat.size(); ++i) {
    const units::Current between = (heat[i - 1].current + heat[i].current) / 2.0;
    const auto tripped = state.advance(between, heat[i].time - heat[i - 1].time);
    if (tripped) return heat[i - 1].time + *tripped;
  }
  const auto left = state.timeToTrip(heat.back().current);
  return left ? std::optional(heat.back().time + *left) : std::nullopt;
}

}  // namespace

std::optional<units::Duration> clearingTime(const OvercurrentDevice& device, TripCurve curve, const FaultHeat& heat) {
  CORDREACH_EXPECTS(!heat.empty());
  const auto thermal = thermalTime(device, curve, heat);
  const auto instantaneous = instantaneousTrip(device.breaker, curve);
  // Steps may be shorter than the instantaneous part's own time, so it is asked once, of the first current.
  if (!instantaneous || heat.front().current < instantaneous->pickUp) return thermal;
  return thermal ? std::min(*thermal, instantaneous->time) : instantaneous->time;
}

}  // namespace cordreach::physics
