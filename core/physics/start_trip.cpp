// SPDX-License-Identifier: GPL-3.0-or-later
// Sample by sample through the replicas.
#include "physics/start_trip.h"

#include <algorithm>
#include <cmath>

namespace cordreach::physics {
namespace {

std::optional<units::Duration> tripOn(TripCurve curve, const StartRun& run, const StartOnBreaker& on) {
  BreakerState state(on.breaker, curve, on.air.at(curve), on.carrying);
  if (state.tripped()) return units::Duration{};
  for (std::size_t i = 1; i < run.samples.size(); ++i) {
    const StartSample& from = run.samples[i - 1];
    const double a = circuitAmps(from, on.othersA).si();
    const double b = circuitAmps(run.samples[i], on.othersA).si();
    // The first stretch at its peak, which the instantaneous part must see.
    const double rmsA = i == 1 ? std::max(a, b) : std::sqrt((a * a + a * b + b * b) / 3.0);
    const auto step = units::Duration::fromSi(run.samples[i].timeS - from.timeS);
    if (const auto after = state.advance(units::Current::fromSi(rmsA), step)) {
      return units::Duration::fromSi(from.timeS) + *after;
    }
  }
  if (run.completes()) return std::nullopt;
  const StartSample& last = run.samples.back();
  const auto rest = state.timeToTrip(circuitAmps(last, on.othersA));
  return rest ? std::optional(units::Duration::fromSi(last.timeS) + *rest) : std::nullopt;
}

}  // namespace

units::Current circuitAmps(const StartSample& sample, std::complex<double> othersA) {
  const double harmonics = sample.totalRmsA * sample.totalRmsA - std::norm(sample.currentA);
  return units::Current::fromSi(std::sqrt(std::max(0.0, harmonics) + std::norm(sample.currentA + othersA)));
}

TripTimes startTrip(const StartRun& run, const StartOnBreaker& on) {
  return {tripOn(TripCurve::Earliest, run, on), tripOn(TripCurve::Likely, run, on), tripOn(TripCurve::Latest, run, on)};
}

}  // namespace cordreach::physics
