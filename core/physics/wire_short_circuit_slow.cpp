// SPDX-License-Identifier: GPL-3.0-or-later
// The slow time stands on both sides of its equation, which is quadratic in sqrt(t).
#include "physics/wire_short_circuit_slow.h"

#include <cmath>
#include <limits>

#include "physics/wire_short_circuit.h"
#include "tables/table.h"

namespace cordreach::physics {

namespace {

double faultConstant(const std::string& id) { return tables::table("fault_constants").at(id).number("value"); }

struct Cover {
  double x;  // mm/s^0.5
  double y;  // mm²/s
};

Cover constantsOf(ConductorCover cover) {
  const std::string key = cover == ConductorCover::Pvc ? "pvc" : cover == ConductorCover::Xlpe ? "xlpe" : "epr";
  return {faultConstant("iec60949." + key + ".x"), faultConstant("iec60949." + key + ".y")};
}

}  // namespace

double slowFactor(const units::WireSize& size, ConductorCover cover, units::Duration time) {
  const Cover constants = constantsOf(cover);
  const double perArea = time.in(units::second) / size.area().in(units::squareMillimetre);
  return 1.0 + constants.x * std::sqrt(perArea) + constants.y * perArea;
}

units::Duration slowTime(const units::WireSize& size, ConductorCover cover, units::Current fault,
                         units::Temperature first, units::Temperature last) {
  const Cover constants = constantsOf(cover);
  const double areaMm2 = size.area().in(units::squareMillimetre);
  const double adiabaticS = adiabaticTime(size, tables::Metal::Copper, fault, first, last).in(units::second);
  // With u = sqrt(t): (1 - a Y/S) u^2 - a X/sqrt(S) u - a = 0.
  const double square = 1.0 - adiabaticS * constants.y / areaMm2;
  if (square <= 0.0) return units::Duration::fromSi(std::numeric_limits<double>::infinity());
  const double linear = adiabaticS * constants.x / std::sqrt(areaMm2);
  const double root = (linear + std::sqrt(linear * linear + 4.0 * square * adiabaticS)) / (2.0 * square);
  return root * root * units::second;
}

units::Current iceaCurrent(const units::WireSize& size, units::Duration time, units::Temperature first,
                           units::Temperature last) {
  constexpr double kCircularMilMm2 = 5.067074790974977e-4;  // pi/4 (0.0254 mm)^2, exact
  const double zero = faultConstant("icea.zero");
  const double growth = std::log10((last.celsius() + zero) / (first.celsius() + zero));
  const double circularMil = size.area().in(units::squareMillimetre) / kCircularMilMm2;
  return circularMil * std::sqrt(faultConstant("icea.constant") * growth / time.in(units::second)) * units::ampere;
}

}  // namespace cordreach::physics
