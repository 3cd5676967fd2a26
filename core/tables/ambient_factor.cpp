// SPDX-License-Identifier: GPL-3.0-or-later
// Ambient correction, printed and by its law.
#include "tables/ambient_factor.h"

#include <cmath>

#include "base/contract.h"
#include "tables/table.h"

namespace cordreach::tables {

std::optional<Sourced<double>> ambientFactor(units::Temperature rating, units::Temperature ambient) {
  // Kelvin to Celsius and back moves the last digit, so that 30 °C must not fall into the band above it.
  constexpr double kSlackC = 1e-9;
  const double ratingC = rating.celsius() + kSlackC;
  const double column = ratingC >= 90.0 ? 90.0 : ratingC >= 75.0 ? 75.0 : 60.0;
  if (ratingC < 60.0) return std::nullopt;
  const Row* best = nullptr;
  for (const Row& row : table("ambient_factor").rows()) {
    const double topC = row.number("ambient_to_c");
    if (row.number("rating_c") != column || ambient.celsius() > topC + kSlackC) continue;
    if (best == nullptr || topC < best->number("ambient_to_c")) best = &row;
  }
  if (best == nullptr) return std::nullopt;
  return Sourced<double>{best->number("factor"), &best->source()};
}

double ambientFactorByLaw(units::Temperature rating, units::Temperature ambient) {
  const auto base = units::Temperature::fromCelsius(30.0);
  CORDREACH_EXPECTS(rating > base);
  if (ambient >= rating) return 0.0;
  return std::sqrt((rating - ambient) / (rating - base));
}

}  // namespace cordreach::tables
