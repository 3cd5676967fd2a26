// SPDX-License-Identifier: GPL-3.0-or-later
// The answer of `heat` as JSON, as a table of figures, and as a page.
#pragma once

#include <string>

#include "console/heat_answer.h"
#include "rules/finding.h"
#include "text/phrasebook.h"

namespace cordreach::console {

// Air in which the properties of air and the model hold.
inline constexpr units::Temperature kColdestAir = units::Temperature::fromCelsius(-30.0);
inline constexpr units::Temperature kHottestAir = units::Temperature::fromCelsius(90.0);

struct HeatVerdict {
  rules::Severity severity;
  const char* phrase;
};

// At the end of the run: the insulation's rating, the hand's limit, the table's amps; the stricter of code and physics.
[[nodiscard]] HeatVerdict heatVerdict(const HeatQuestion& question, const HeatAnswer& answer);

[[nodiscard]] std::string heatJson(const HeatAnswer& answer);
[[nodiscard]] std::string heatCsv(const HeatAnswer& answer);
[[nodiscard]] std::string heatPage(const HeatQuestion& question, const HeatAnswer& answer, const text::Phrasebook& book,
                                   bool color);

}  // namespace cordreach::console
