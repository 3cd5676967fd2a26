// SPDX-License-Identifier: GPL-3.0-or-later
// How hot a stretch of cord gets when its current stays, with the band that honesty owes it.
// Band: the wider of the corner's own result and the likely rise times the laying's spread (free air 0.80 to 1.20,
// floor and carpet 0.75 to 1.25, covered 1/1.6 to 1.6, coil and reel 0.70 to 1.30).
// Unvalidated against cords measured in use: no such table was found.
#pragma once

#include <optional>

#include "physics/cord_section.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::physics {

// None: beyond the model (runaway, or a conductor over 300 °C), which is an answer, not an error.
[[nodiscard]] std::optional<HeatResult> steady(const CordSection& section, units::Current rms,
                                               units::Temperature ambient, Corner corner = Corner::Likely);

struct HeatBand {
  std::optional<HeatResult> low;
  std::optional<HeatResult> likely;
  std::optional<HeatResult> high;
};

// All three corners at once, cheaper than one by one.
[[nodiscard]] HeatBand steadyBand(const CordSection& section, units::Current rms, units::Temperature ambient);

// The current that brings the conductor to `limit`, which is above `ambient`, in the end.
[[nodiscard]] units::Current currentForLimit(const CordSection& section, units::Temperature limit,
                                             units::Temperature ambient, Corner corner = Corner::Likely);

// The scale of heat loss that makes the likely steady jacket as hot as measured, clamped to 0.6 to 1.5. The section's
// own scale does not count.
[[nodiscard]] double lossScaleFrom(CordSection section, units::Current rms, units::Temperature ambient,
                                   units::Temperature measuredSurface);

// The ends of that clamp.
[[nodiscard]] double leastLossScale();
[[nodiscard]] double mostLossScale();

// The rule that joins a corner with the laying's spread: of two results that of the corner's side.
[[nodiscard]] HeatResult widerOf(const HeatResult& ofCorner, const HeatResult& likely, units::Temperature ambient,
                                 tables::Laying laying, Corner corner);

}  // namespace cordreach::physics
