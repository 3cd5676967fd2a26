// SPDX-License-Identifier: GPL-3.0-or-later
// What copper and aluminium conductors are made of: R(T) = R20 (1 + alpha20 (T - 20 °C)), the line through
// zeroResistance. Copper is 100 % IACS (IEC 60028), aluminium 61.0 % IACS (IEC 60889).
#pragma once

#include "tables/sourced.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::tables {

enum class Metal { Copper, Aluminium };

struct ConductorMetal {
  Sourced<units::Resistivity> resistivity20;
  Sourced<double> alpha20PerK;
  Sourced<units::Temperature> zeroResistance;
  Sourced<double> alpha75PerK;  // what the NEC prints with its Table 8, for that table's temperature formula
};

[[nodiscard]] const ConductorMetal& conductorMetal(Metal metal);

// Row-id word: `copper`, `aluminium`.
[[nodiscard]] const char* metalKey(Metal metal);

}  // namespace cordreach::tables
