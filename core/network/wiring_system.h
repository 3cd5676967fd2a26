// SPDX-License-Identifier: GPL-3.0-or-later
// What feeds a building: open-circuit line-to-neutral volts and a source impedance, by wiring system. Angles: the first
// phase stands at 0; the second leg of a split phase at 180 degrees, three phases at 0, -120 and 120 degrees.
#pragma once

#include <string>
#include <vector>

#include "network/network.h"
#include "tables/source.h"
#include "units/quantity.h"

namespace cordreach::network {

struct Supply {
  std::string key;              // stable: "utility_120_240", "utility_208y_120", "utility_230", "utility_230_400", ...
  std::vector<Phasor> sourceV;  // goes into Panel::sourceV
  Branch source;                // goes into Panel::feeder, with a feeder's own impedance added
  tables::Source impedance;     // where the source impedance comes from
  bool limitsItsCurrent = false;  // a generator or inverter: a fault's current is not its volts over its impedance
};

// Utility supplies, with `defaultSourceLoop` unless another is known. Loop: phase to neutral and back, all resistance,
// half of it in each conductor. Fails its contract below 0 ohm.
[[nodiscard]] units::Resistance defaultSourceLoop();                                   // 0.06 ohm
[[nodiscard]] Supply utilitySplitPhase(units::Resistance loop = defaultSourceLoop());  // 120/240 V
[[nodiscard]] Supply utility208Y(units::Resistance loop = defaultSourceLoop());        // 208Y/120 V
[[nodiscard]] Supply utility230(units::Resistance loop = defaultSourceLoop());         // 230 V, one phase
[[nodiscard]] Supply utility230Y400(units::Resistance loop = defaultSourceLoop());     // 230/400 V

// Phase to neutral and back of a transformer's winding: impedance per unit times V²/VA, here as a resistance.
[[nodiscard]] units::Resistance transformerLoop(units::Voltage winding, units::Power rating, double perUnit);

// Local supplies, their impedance from their rating (volts times amps of the whole, over all its windings): steady
// voltage droop, valid up to that rating and not for faults.
enum class LocalOutput { Single120, Split120And240, Single230 };
[[nodiscard]] Supply generator(LocalOutput output, units::Power rating);
[[nodiscard]] Supply inverter(LocalOutput output, units::Power rating);

}  // namespace cordreach::network
