// SPDX-License-Identifier: GPL-3.0-or-later
// Loops added up, and what the standard asks of them.
#include "physics/fault_loop.h"

#include <cmath>

#include "base/contract.h"
#include "tables/table.h"

namespace cordreach::physics {

namespace {

double faultConstant(const char* id) { return tables::table("fault_constants").at(id).number("value"); }

}  // namespace

FaultLoop conductorLoop(const units::WireSize& size, tables::Metal metal, WireUse use, units::Length length,
                        units::Temperature at) {
  const double oneWay = (wireResistance(size, metal, use, at) * length).in(units::ohm);
  return {oneWay, oneWay};
}

FaultLoop jointsLoop() {
  const double half = faultConstant("joints") / 2.0;
  return {half, half};
}

units::Current boltedCurrent(units::Voltage toEarth, const FaultLoop& loop, double voltageFactor) {
  const double ohm = std::abs(loop.ohm());
  CORDREACH_EXPECTS(ohm > 0.0);
  return voltageFactor * toEarth / (ohm * units::ohm);
}

double leastVoltageFactor() { return faultConstant("voltage.least"); }

units::Temperature hotLoop() { return units::Temperature::fromCelsius(faultConstant("hot")); }

units::Resistance largestLoop(units::Voltage toEarth, units::Current acting) {
  return leastVoltageFactor() * toEarth / acting;
}

units::Resistance largestLoopMeasuredCold(units::Voltage toEarth, units::Current acting) {
  return faultConstant("cold_measured") * toEarth / acting;
}

units::Duration disconnectionTime(units::Voltage toEarth) {
  const double volts = toEarth.in(units::volt);
  CORDREACH_EXPECTS(volts > 50.0 && volts <= 400.0);
  const char* id = volts <= 120.0   ? "disconnection.low"
                   : volts <= 230.0 ? "disconnection.middle"
                                    : "disconnection.high";
  return faultConstant(id) * units::second;
}

}  // namespace cordreach::physics
