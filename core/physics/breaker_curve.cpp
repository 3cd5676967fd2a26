// SPDX-License-Identifier: GPL-3.0-or-later
// The curves' constants, computed from the calibration points in the table.
#include "physics/breaker_curve.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <string_view>

#include "base/contract.h"
#include "tables/table.h"

namespace cordreach::physics {
namespace {

// Read once: a day of a building asks for them tens of thousands of times.
double constant(const char* id) {
  static const std::map<std::string, double, std::less<>> values = [] {
    std::map<std::string, double, std::less<>> read;
    for (const tables::Row& row : tables::table("breaker_curves").rows()) read[row.id()] = row.number("value");
    return read;
  }();
  const auto found = values.find(std::string_view(id));
  CORDREACH_EXPECTS(found != values.end());
  return found->second;
}

// I_th in multiples of the rating at its own air, and how it moves with other air.
struct Replica {
  double ultimate;
  double timeConstantS;
  double airC;
  double bimetalBelowC;  // T_t below airC
  double bimetalAboveC;
};

// The replica through two points "trips within": the longer time at the lower current, the shorter at the higher.
Replica throughPoints(double lowMultiple, double lowTimeS, double highMultiple, double highTimeS) {
  const double highSquared = highMultiple * highMultiple;
  const double lowSquared = lowMultiple * lowMultiple;
  const double tau = highTimeS / std::log(highSquared / (highSquared - lowSquared));
  return {lowMultiple * std::sqrt(1.0 - std::exp(-lowTimeS / tau)), tau, 0.0, 0.0, 0.0};
}

Replica latestUs(double ratingA) {
  const char* doubleTime = ratingA <= 30.0   ? "ul489.double_time_30"
                           : ratingA <= 50.0 ? "ul489.double_time_50"
                                             : "ul489.double_time_100";
  const char* overloadTime = ratingA <= 50.0 ? "ul489.overload_time" : "ul489.overload_time_large";
  return throughPoints(constant("ul489.overload"), constant(overloadTime), constant("ul489.double"),
                       constant(doubleTime));
}

Replica latestIec(double ratingA) {
  const char* doubleTime = ratingA <= 32.0 ? "iec60898.double_time" : "iec60898.double_time_large";
  return throughPoints(constant("iec60898.overload"), constant("iec60898.overload_time"), constant("iec60898.double"),
                       constant(doubleTime));
}

Replica withoutAir(bool iec, double ratingA, TripCurve curve) {
  if (curve == TripCurve::Latest) return iec ? latestIec(ratingA) : latestUs(ratingA);
  if (curve == TripCurve::Likely) {
    return iec ? Replica{constant("iec.likely.ultimate"), constant("iec.likely.time_constant"), 0, 0, 0}
               : Replica{constant("us.likely.ultimate"), constant("us.likely.time_constant"), 0, 0, 0};
  }
  return iec ? Replica{constant("iec60898.hold"), constant("iec.earliest.time_constant"), 0, 0, 0}
             : Replica{constant("us.earliest.ultimate"), constant("us.earliest.time_constant"), 0, 0, 0};
}

Replica replica(const Breaker& breaker, TripCurve curve) {
  const bool iec = breaker.kind != BreakerKind::ThermalMagnetic && breaker.kind != BreakerKind::Fuse;
  Replica r = withoutAir(iec, breaker.rating.si(), curve);
  const bool earliest = curve == TripCurve::Earliest;
  r.airC = iec ? constant("iec60898.calibration") : constant(earliest ? "ul489.hold_air" : "ul489.calibration");
  // The earliest curve gains least in cool air and loses most in hot air; the latest the other way round.
  const double cool = constant("bimetal.cool");
  const double warm = constant("bimetal.warm");
  if (curve == TripCurve::Likely) {
    r.bimetalBelowC = r.bimetalAboveC = constant("bimetal.middle");
  } else {
    r.bimetalBelowC = earliest ? warm : cool;
    r.bimetalAboveC = earliest ? cool : warm;
  }
  return r;
}

}  // namespace

ThermalCurve thermalCurve(const Breaker& breaker, TripCurve curve, units::Temperature air) {
  const Replica r = replica(breaker, curve);
  const double bimetalC = air.celsius() < r.airC ? r.bimetalBelowC : r.bimetalAboveC;
  // Air as hot as the bimetal's trip temperature leaves nothing to carry; a kelvin keeps the curve defined.
  const double left = std::max(bimetalC - air.celsius(), 1.0);
  const double ultimate = r.ultimate * std::sqrt(left / (bimetalC - r.airC));
  return {ultimate * breaker.rating, units::Duration::fromSi(r.timeConstantS)};
}

std::optional<InstantaneousTrip> instantaneousTrip(const Breaker& breaker, TripCurve curve) {
  if (breaker.kind == BreakerKind::Fuse) return std::nullopt;
  constexpr units::Current kLargestOfFixedBand = 20.0 * units::ampere;
  std::string id = breaker.rating <= kLargestOfFixedBand ? "thermal_magnetic.20" : "thermal_magnetic.larger";
  if (breaker.kind == BreakerKind::IecB) id = "iec_b";
  if (breaker.kind == BreakerKind::IecC) id = "iec_c";
  if (breaker.kind == BreakerKind::IecD) id = "iec_d";
  const char* column = curve == TripCurve::Earliest ? "earliest" : curve == TripCurve::Likely ? "likely" : "latest";
  const tables::Table& table = tables::table("breaker_instantaneous");
  const tables::Row& row = table.at(id);
  const units::Current base = row.text("unit") == "A" ? units::ampere : breaker.rating;
  const double timeS = table.at("time").number(column);
  return InstantaneousTrip{row.number(column) * base, units::Duration::fromSi(timeS)};
}

units::Temperature defaultBreakerAir() { return units::Temperature::fromCelsius(constant("air.default")); }

}  // namespace cordreach::physics
