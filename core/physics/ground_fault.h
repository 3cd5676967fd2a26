// SPDX-License-Identifier: GPL-3.0-or-later
// Ground-fault protection of people: a class A device by UL 943, and the leakage that adds up to it.
//   longest trip time t = (20 mA / I)^1.43 s, 6 to 264 mA; none below; flat above. No trip below 4 mA.
// Leakage is mostly capacitive, so that of several appliances adds arithmetically: I = V omega C of a cord.
#pragma once

#include <optional>

#include "units/quantity.h"

namespace cordreach::physics {

enum class GroundFaultAnswer { Holds, MayTrip, Trips };

[[nodiscard]] GroundFaultAnswer groundFaultAnswer(units::Current residual);
// Longest time a class A device may take; none: it need not trip.
[[nodiscard]] std::optional<units::Duration> groundFaultTripTime(units::Current residual);

// Leakage allowed of one appliance (UL 101 scheme).
[[nodiscard]] units::Current portableLeakage();
[[nodiscard]] units::Current stationaryLeakage();
// And of a portable one without an earth (IEC 60335-1: 0.35 mA peak; from memory).
[[nodiscard]] units::Current doubleInsulatedLeakage();
// Between live and earth conductor of a dry cord (150 pF/m, 80 to 300; from memory).
[[nodiscard]] units::Current cordLeakage(units::Length length, units::Voltage toEarth, units::Frequency frequency);

}  // namespace cordreach::physics
