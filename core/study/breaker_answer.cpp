// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/breaker_answer.h"

#include <algorithm>
#include <limits>

#include "study/assumptions.h"

namespace cordreach::study {

namespace {

using units::Current;

physics::BreakerKind kindOf(site::BreakerCurve curve) {
  switch (curve) {
    case site::BreakerCurve::ThermalMagnetic:
      return physics::BreakerKind::ThermalMagnetic;
    case site::BreakerCurve::IecB:
      return physics::BreakerKind::IecB;
    case site::BreakerCurve::IecC:
      return physics::BreakerKind::IecC;
    case site::BreakerCurve::IecD:
      return physics::BreakerKind::IecD;
    case site::BreakerCurve::Fuse:
      return physics::BreakerKind::Fuse;
  }
  return physics::BreakerKind::ThermalMagnetic;
}

BreakerAnswer answerFor(const site::Site& site, const physics::Breaker& breaker, const BreakerMoment& moment) {
  const CircuitLoad& load = moment.load;
  BreakerAnswer answer;
  answer.current = load.current.likely;
  answer.run = moment.run;
  // Something that cycles comes on while all the rest already runs; else everything comes on after the moment before.
  // An overload just before is answered at its own moment, so no more than the rating is carried over from it.
  answer.carrying = std::min(moment.before, breaker.rating);
  if (load.longestCycle) answer.carrying = std::max(answer.carrying, std::min(load.withoutCycling, breaker.rating));
  answer.trip = physics::trip(breaker, answer.current, answer.carrying, breakerAirOf(site));
  const bool restNeverTrips =
      !physics::trip(breaker, load.withoutCycling, answer.carrying, breakerAirOf(site)).likely.has_value();
  if (load.longestCycle && restNeverTrips) answer.run = std::min(answer.run, *load.longestCycle);
  return answer;
}

double secondsOr(const std::optional<units::Duration>& time, double never) { return time ? time->si() : never; }

}  // namespace

physics::BreakerAir breakerAirOf(const site::Site& site) {
  if (site.ambient.panel) return physics::BreakerAir::all(site.ambient.panel->value);
  return physics::BreakerAir::panelIn(roomOf(site));
}

std::optional<physics::Breaker> breakerOf(const site::Circuit& circuit) {
  if (!circuit.rating) return std::nullopt;
  return physics::Breaker{circuit.rating->value, kindOf(circuit.curve)};
}

BreakerAnswer breakerAnswerOf(const site::Site& site, const site::Circuit& circuit, const BreakerMoment& moment) {
  const auto breaker = breakerOf(circuit);
  if (!breaker) {
    BreakerAnswer answer;
    answer.carrying = moment.before;
    answer.current = moment.load.current.likely;
    answer.run = moment.run;
    return answer;
  }
  BreakerAnswer answer = answerFor(site, *breaker, moment);
  answer.rating = breaker->rating;
  return answer;
}

BreakerAnswer supposedBreakerAnswerOf(const site::Site& site, const BreakerMoment& moment) {
  constexpr Current kStrictest = 15.0 * units::ampere;
  return answerFor(site, {kStrictest, physics::BreakerKind::ThermalMagnetic}, moment);
}

BreakerAnswer mainAnswerOf(const site::Site& site, const site::Panel& panel, const BreakerMoment& moment) {
  BreakerAnswer answer = answerFor(site, physics::Breaker{panel.mainRating->value}, moment);
  answer.rating = panel.mainRating->value;
  return answer;
}

WithinRun withinRun(const BreakerAnswer& breaker) {
  if (!breaker.trip) return WithinRun::Holds;
  const auto within = [&](const std::optional<units::Duration>& time) { return time && *time <= breaker.run; };
  if (within(breaker.trip->likely)) return WithinRun::Trips;
  return within(breaker.trip->earliest) ? WithinRun::TripsEarly : WithinRun::Holds;
}

bool worse(const BreakerAnswer& a, const BreakerAnswer& b) {
  constexpr double kNever = std::numeric_limits<double>::infinity();
  const auto rank = [](const BreakerAnswer& answer) {
    const physics::TripTimes trip = answer.trip.value_or(physics::TripTimes{});
    return std::array{secondsOr(trip.likely, kNever), secondsOr(trip.earliest, kNever), -answer.current.si()};
  };
  return rank(a) < rank(b);
}

}  // namespace cordreach::study
