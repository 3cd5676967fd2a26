// SPDX-License-Identifier: GPL-3.0-or-later
// How the air's temperature changes an allowed current: NEC Table 310.15(B)(1), as printed, above 1 where it prints so.
// Capping at 1 is the business of whoever applies the code.
#pragma once

#include <optional>

#include "tables/sourced.h"
#include "units/temperature.h"

namespace cordreach::tables {

// Column 60, 75 or 90 °C: the highest not above `rating` (a 105 °C cord uses 90, NEC 400.5). Nothing where the table
// has none: a rating below 60 °C, or air so hot that the conductor may carry nothing.
[[nodiscard]] std::optional<Sourced<double>> ambientFactor(units::Temperature rating, units::Temperature ambient);

// The law behind the table: sqrt((rating - ambient) / (rating - 30 °C)), 0 in air as hot as the rating, for a rating
// above 30 °C (else our own bug). The table prints it at the top of each band, rounded.
[[nodiscard]] double ambientFactorByLaw(units::Temperature rating, units::Temperature ambient);

}  // namespace cordreach::tables
