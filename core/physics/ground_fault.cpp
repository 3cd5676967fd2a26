// SPDX-License-Identifier: GPL-3.0-or-later
// The class A curve and leakage, from the table.
#include "physics/ground_fault.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "tables/table.h"

namespace cordreach::physics {
namespace {

double constant(const char* id) { return tables::table("breaker_ground_fault").at(id).number("value"); }
units::Current milliamperes(const char* id) { return constant(id) * units::milliampere; }

}  // namespace

GroundFaultAnswer groundFaultAnswer(units::Current residual) {
  if (residual < milliamperes("no_trip")) return GroundFaultAnswer::Holds;
  return residual < milliamperes("must_trip") ? GroundFaultAnswer::MayTrip : GroundFaultAnswer::Trips;
}

std::optional<units::Duration> groundFaultTripTime(units::Current residual) {
  if (groundFaultAnswer(residual) != GroundFaultAnswer::Trips) return std::nullopt;
  const units::Current onCurve = std::min(residual, milliamperes("curve.largest"));
  return units::Duration::fromSi(std::pow(milliamperes("curve.current") / onCurve, constant("curve.exponent")));
}

units::Current portableLeakage() { return milliamperes("leakage.portable"); }
units::Current stationaryLeakage() { return milliamperes("leakage.stationary"); }
units::Current doubleInsulatedLeakage() { return milliamperes("leakage.double_insulated"); }

units::Current cordLeakage(units::Length length, units::Voltage toEarth, units::Frequency frequency) {
  const double farads = constant("cord.capacitance") * 1e-12 * length.in(units::metre);
  return units::Current::fromSi(toEarth.si() * 2.0 * std::numbers::pi * frequency.in(units::hertz)*farads);
}

}  // namespace cordreach::physics
