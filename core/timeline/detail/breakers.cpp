// SPDX-License-Identifier: GPL-3.0-or-later
#include "timeline/detail/breakers.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace cordreach::timeline::detail {

namespace {

using units::ampere;
using units::second;

constexpr double kNever = std::numeric_limits<double>::infinity();
constexpr double kNotableA = 1e-3;

std::optional<units::Duration> secondsOf(const std::optional<double>& timeS) {
  return timeS ? std::optional(*timeS * second) : std::nullopt;
}

}  // namespace

Breakers::Breakers(const Day& day, Acting acting) : m_day(day), m_acting(acting) {
  for (const ProtectedPoles& poles : day.protectedPoles) {
    One one;
    one.actsS = kNever;
    one.acts = poles.acts;
    if (poles.breaker) {
      for (const auto curve : physics::kTripCurves) {
        one.curves.push_back({physics::BreakerState(*poles.breaker, curve, poles.air.at(curve))});
      }
    }
    m_each.push_back(std::move(one));
  }
}

std::optional<std::size_t> Breakers::actingCurve() const {
  switch (m_acting) {
    case Acting::None:
      return std::nullopt;
    case Acting::Earliest:
      return 0;
    case Acting::Likely:
      return 1;
    case Acting::Latest:
      return 2;
  }
  return std::nullopt;
}

double Breakers::nextTripS() const {
  double next = kNever;
  for (const One& one : m_each) next = std::min(next, one.actsS);
  return next;
}

std::vector<std::size_t> Breakers::takeTripped(double nowS) {
  std::vector<std::size_t> tripped;
  for (std::size_t i = 0; i < m_each.size(); ++i) {
    One& one = m_each[i];
    if (one.out || one.actsS > nowS) continue;
    bringTo(one, nowS);
    // Rounding may leave the replica a hair under its trip.
    auto& acted = one.curves[*actingCurve()].tripS;
    if (!acted) acted = one.actsS;
    for (Curve& curve : one.curves) {
      const auto later = curve.tripS ? std::nullopt : curve.state.timeToTrip(one.rmsA * ampere);
      if (later) curve.tripS = nowS + later->si();
    }
    one.out = true;
    one.actsS = kNever;
    tripped.push_back(i);
  }
  return tripped;
}

void Breakers::settle(std::size_t index, double rmsA) {
  One& one = m_each[index];
  one.rmsA = rmsA;
  one.largestA = rmsA;
  if (one.curves.empty()) return;
  const ProtectedPoles& poles = m_day.protectedPoles[index];
  const units::Current carried = std::min(rmsA * ampere, poles.breaker->rating);
  for (std::size_t i = 0; i < one.curves.size(); ++i) {
    const auto curve = physics::kTripCurves.at(i);
    one.curves[i].state = physics::BreakerState(*poles.breaker, curve, poles.air.at(curve), carried);
  }
  planTrip(one, 0.0);
}

void Breakers::carry(std::size_t index, double nowS, double rmsA) {
  One& one = m_each[index];
  one.largestA = std::max(one.largestA, rmsA);
  if (std::abs(rmsA - one.rmsA) < kNotableA) return;
  bringTo(one, nowS);
  one.rmsA = rmsA;
  planTrip(one, nowS);
}

void Breakers::start(std::size_t index, double nowS, double rmsA, units::Duration lasts) {
  One& one = m_each[index];
  if (one.curves.empty() || one.out) return;
  bringTo(one, nowS);
  const auto acting = actingCurve();
  for (std::size_t i = 0; i < one.curves.size(); ++i) {
    Curve& curve = one.curves[i];
    const auto tripped = curve.state.advance(rmsA * ampere, lasts);
    if (!tripped || curve.tripS) continue;
    curve.tripS = nowS + tripped->si();
    if (acting == i && one.acts) one.actsS = *curve.tripS;
  }
  if (!acting || !one.curves[*acting].tripS) planTrip(one, nowS);
}

void Breakers::bringTo(One& one, double nowS) const {
  const double spanS = nowS - one.stateS;
  one.stateS = nowS;
  if (spanS <= 0.0) return;
  for (Curve& curve : one.curves) {
    const auto tripped = curve.state.advance(one.rmsA * ampere, spanS * second);
    if (tripped && !curve.tripS) curve.tripS = nowS - spanS + tripped->si();
  }
}

void Breakers::planTrip(One& one, double nowS) const {
  one.actsS = kNever;
  const auto acting = actingCurve();
  if (one.out || !one.acts || !acting || one.curves.empty()) return;
  const auto time = one.curves[*acting].state.timeToTrip(one.rmsA * ampere);
  if (time) one.actsS = nowS + time->si();
}

void Breakers::bringAllTo(double nowS) {
  for (One& one : m_each) bringTo(one, nowS);
}

std::vector<physics::TripTimes> Breakers::trips() const {
  std::vector<physics::TripTimes> trips;
  for (const One& one : m_each) {
    if (one.curves.empty()) {
      trips.emplace_back();
      continue;
    }
    trips.push_back({secondsOf(one.curves[0].tripS), secondsOf(one.curves[1].tripS), secondsOf(one.curves[2].tripS)});
  }
  return trips;
}

std::vector<double> Breakers::largestA() const {
  std::vector<double> largest;
  for (const One& one : m_each) largest.push_back(one.largestA);
  return largest;
}

}  // namespace cordreach::timeline::detail
