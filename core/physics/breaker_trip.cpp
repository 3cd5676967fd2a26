// SPDX-License-Identifier: GPL-3.0-or-later
// The replica's closed form over intervals of constant current.
#include "physics/breaker_trip.h"

#include <algorithm>
#include <cmath>

#include "base/contract.h"

namespace cordreach::physics {

std::optional<units::Duration> TripTimes::at(TripCurve curve) const {
  return curve == TripCurve::Earliest ? earliest : curve == TripCurve::Likely ? likely : latest;
}

BreakerAir BreakerAir::all(units::Temperature air) { return {air, air, air}; }

BreakerAir BreakerAir::panelIn(units::Temperature room) {
  constexpr units::TemperatureRise kNeighbours = 10.0 * units::kelvin;  // 10 to 15 K in a full panel, from memory
  return {room + kNeighbours, room, room};
}

units::Temperature BreakerAir::at(TripCurve curve) const {
  return curve == TripCurve::Earliest ? earliest : curve == TripCurve::Likely ? likely : latest;
}

std::optional<units::Duration> tripTime(const Breaker& breaker, TripCurve curve, units::Current amps,
                                        units::Current carrying, units::Temperature air) {
  return BreakerState(breaker, curve, air, carrying).timeToTrip(amps);
}

TripTimes trip(const Breaker& breaker, units::Current amps, units::Current carrying, const BreakerAir& air) {
  const auto one = [&](TripCurve curve) { return tripTime(breaker, curve, amps, carrying, air.at(curve)); };
  return {one(TripCurve::Earliest), one(TripCurve::Likely), one(TripCurve::Latest)};
}

BreakerState::BreakerState(const Breaker& breaker, TripCurve curve, units::Temperature air, units::Current carrying)
    : m_curve(thermalCurve(breaker, curve, air)), m_instantaneous(instantaneousTrip(breaker, curve)) {
  CORDREACH_EXPECTS(carrying.si() >= 0.0);
  m_theta = target(carrying);
  m_tripped = m_theta >= 1.0;
}

std::optional<units::Duration> BreakerState::advance(units::Current rms, units::Duration duration) {
  if (m_tripped) {
    settle(0.0, duration);
    return std::nullopt;
  }
  const auto until = timeToTrip(rms);
  if (!until || *until > duration) {
    settle(target(rms), duration);
    return std::nullopt;
  }
  settle(target(rms), *until);
  m_tripped = true;
  settle(0.0, duration - *until);
  return until;
}

std::optional<units::Duration> BreakerState::timeToTrip(units::Current rms) const {
  CORDREACH_EXPECTS(rms.si() >= 0.0);
  if (m_tripped || m_theta >= 1.0) return units::Duration{};
  const double towards = target(rms);
  std::optional<units::Duration> time;
  if (towards > 1.0) time = m_curve.timeConstant * std::log((towards - m_theta) / (towards - 1.0));
  if (m_instantaneous && rms >= m_instantaneous->pickUp) {
    time = time ? std::min(*time, m_instantaneous->time) : m_instantaneous->time;
  }
  return time;
}

double BreakerState::target(units::Current rms) const {
  const double ratio = rms / m_curve.ultimate;
  return ratio * ratio;
}

void BreakerState::settle(double target, units::Duration duration) {
  m_theta = target + (m_theta - target) * std::exp(-(duration / m_curve.timeConstant));
}

}  // namespace cordreach::physics
