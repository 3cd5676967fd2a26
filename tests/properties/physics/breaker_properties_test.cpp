// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold for every breaker, current and air.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "physics/breaker_trip.h"

namespace cordreach::physics {
namespace {

Breaker anyBreaker() {
  return {static_cast<double>(*rc::gen::element(6, 10, 15, 16, 20, 30, 32, 40, 63, 100)) * units::ampere,
          *rc::gen::element(BreakerKind::ThermalMagnetic, BreakerKind::IecB, BreakerKind::IecC, BreakerKind::IecD,
                            BreakerKind::Fuse)};
}

TripCurve anyCurve() { return *rc::gen::element(TripCurve::Earliest, TripCurve::Likely, TripCurve::Latest); }
double anyMultiple() { return 0.01 * *rc::gen::inRange(0, 1500); }
units::Temperature anyAir() { return units::Temperature::fromCelsius(*rc::gen::inRange(-20, 60)); }

// Never is later than everything.
double seconds(const std::optional<units::Duration>& time) { return time ? time->si() : 1e30; }

RC_GTEST_PROP(Trip, MoreCurrentNeverTripsLater, ()) {
  const Breaker breaker = anyBreaker();
  const TripCurve curve = anyCurve();
  const auto air = anyAir();
  const double multiple = anyMultiple();
  const auto carrying = 0.5 * *rc::gen::element(0.0, 0.5, 1.0) * breaker.rating;
  const auto less = tripTime(breaker, curve, multiple * breaker.rating, carrying, air);
  const auto more = tripTime(breaker, curve, (multiple + anyMultiple()) * breaker.rating, carrying, air);
  RC_ASSERT(seconds(more) <= seconds(less));
}

RC_GTEST_PROP(Trip, MoreCarriedBeforeNeverTripsLater, ()) {
  const Breaker breaker = anyBreaker();
  const TripCurve curve = anyCurve();
  const auto air = anyAir();
  const auto amps = anyMultiple() * breaker.rating;
  const double before = 0.01 * *rc::gen::inRange(0, 200);
  const double extra = 0.01 * *rc::gen::inRange(0, 100);
  RC_ASSERT(seconds(tripTime(breaker, curve, amps, (before + extra) * breaker.rating, air)) <=
            seconds(tripTime(breaker, curve, amps, before * breaker.rating, air)));
}

RC_GTEST_PROP(Trip, HotterAirNeverTripsLater, ()) {
  const Breaker breaker = anyBreaker();
  const TripCurve curve = anyCurve();
  const auto air = anyAir();
  const auto hotter = air + static_cast<double>(*rc::gen::inRange(0, 40)) * units::kelvin;
  const auto amps = anyMultiple() * breaker.rating;
  const auto carrying = 0.01 * *rc::gen::inRange(0, 100) * breaker.rating;
  RC_ASSERT(seconds(tripTime(breaker, curve, amps, carrying, hotter)) <=
            seconds(tripTime(breaker, curve, amps, carrying, air)));
}

RC_GTEST_PROP(Trip, CurvesStayInOrder, ()) {
  const Breaker breaker = anyBreaker();
  const auto air = anyAir();
  const auto amps = anyMultiple() * breaker.rating;
  const auto carrying = 0.01 * *rc::gen::inRange(0, 100) * breaker.rating;
  for (const BreakerAir& airs : {BreakerAir::all(air), BreakerAir::panelIn(air)}) {
    const TripTimes times = trip(breaker, amps, carrying, airs);
    RC_ASSERT(seconds(times.earliest) <= seconds(times.likely));
    RC_ASSERT(seconds(times.likely) <= seconds(times.latest));
  }
}

RC_GTEST_PROP(BreakerState, TripsInADutyExactlyWhenItsThetaReachesOne, ()) {
  const Breaker breaker = anyBreaker();
  BreakerState state(breaker, anyCurve(), anyAir());
  for (int interval = 0; interval < 20 && !state.tripped(); ++interval) {
    const auto amps = 0.01 * *rc::gen::inRange(0, 250) * breaker.rating;
    const auto duration = static_cast<double>(*rc::gen::inRange(1, 300)) * units::second;
    const auto foretold = state.timeToTrip(amps);
    const auto tripped = state.advance(amps, duration);
    RC_ASSERT(tripped.has_value() == (foretold.has_value() && *foretold <= duration));
    if (!tripped) {
      RC_ASSERT(state.theta() < 1.0 + 1e-12);
    }
  }
}

}  // namespace
}  // namespace cordreach::physics
