// SPDX-License-Identifier: GPL-3.0-or-later
// How hot a cord may get to the hand and to itself, as flags with their published thresholds.
#pragma once

#include <string_view>

#include "tables/source.h"
#include "units/temperature.h"

namespace cordreach::physics {

struct TemperatureLimit {
  units::Temperature value;
  tables::Source source;
};

[[nodiscard]] TemperatureLimit jacketWarm();             // 48 °C: warm to hold for longer than a minute
[[nodiscard]] TemperatureLimit jacketTooHotToHold();     // 60 °C: warn
[[nodiscard]] TemperatureLimit jacketTooHotToTouch();    // 77 °C: stop
[[nodiscard]] TemperatureLimit unmarkedCordRating();     // 60 °C
[[nodiscard]] TemperatureLimit conductorDamage();        // 105 °C: whatever the marking
[[nodiscard]] TemperatureLimit conductorShortCircuit();  // 160 °C: for at most five seconds

enum class JacketFeel { Cool, WarmToHold, TooHotToHold, TooHotToTouch };

// Above the limits; at a limit exactly, still below it.
[[nodiscard]] JacketFeel jacketFeel(units::Temperature surface);

enum class TouchMaterial { BareMetal, Plastic };

// ISO 13732-1 burn thresholds at 10 s, 1 min, 10 min and 8 h; the row for the longest of these not above `contactS`,
// the 10 s row below that.
[[nodiscard]] TemperatureLimit burnThreshold(TouchMaterial material, double contactS);

}  // namespace cordreach::physics
