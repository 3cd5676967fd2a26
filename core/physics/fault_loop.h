// SPDX-License-Identifier: GPL-3.0-or-later
// The loop that a fault at a cord's end closes, out through the line and back through neutral or earth, and the current
// in it when the fault has no resistance of its own ("bolted"):
//   I = c U0 / |Z_source + sum (Z_line + Z_return) + joints|,  R(T) of every conductor
//   a device that must act at I_a is reached if Z I_a <= c U0, c = 0.95; measured cold, Z <= (2/3) U0/I_a
//                                                                       IEC 60364-4-41 411.4.4, from memory
// Range: radial circuits of 10 AWG and less, where reactance is under a tenth of the resistance; sources that do not
// limit their own current.
#pragma once

#include <complex>

#include "physics/wire.h"
#include "tables/conductor_metal.h"
#include "units/quantity.h"
#include "units/temperature.h"
#include "units/wire_size.h"

namespace cordreach::physics {

struct FaultLoop {
  std::complex<double> lineOhm;    // from the source's volts to the fault
  std::complex<double> returnOhm;  // from there back to the source

  [[nodiscard]] std::complex<double> ohm() const { return lineOhm + returnOhm; }
  friend FaultLoop operator+(const FaultLoop& a, const FaultLoop& b) {
    return {a.lineOhm + b.lineOhm, a.returnOhm + b.returnOhm};
  }
};

// A stretch with equal conductors out and back, by resistance alone.
[[nodiscard]] FaultLoop conductorLoop(const units::WireSize& size, tables::Metal metal, WireUse use,
                                      units::Length length, units::Temperature at);
// What tables and cold measurements leave out: 40 mohm, half of it each way.
[[nodiscard]] FaultLoop jointsLoop();

[[nodiscard]] units::Current boltedCurrent(units::Voltage toEarth, const FaultLoop& loop, double voltageFactor = 1.0);

// c_min, 0.95: what may be missing of the nominal volts.
[[nodiscard]] double leastVoltageFactor();
// 60 °C, at which a loop is "hot".
[[nodiscard]] units::Temperature hotLoop();

// The largest loop through which a device that acts at `acting` is still reached: hot, or as measured cold.
[[nodiscard]] units::Resistance largestLoop(units::Voltage toEarth, units::Current acting);
[[nodiscard]] units::Resistance largestLoopMeasuredCold(units::Voltage toEarth, units::Current acting);

// Longest time until a fault to earth in a final circuit is cut off, TN, above 50 and to 400 V.
[[nodiscard]] units::Duration disconnectionTime(units::Voltage toEarth);

}  // namespace cordreach::physics
