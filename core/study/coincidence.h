// SPDX-License-Identifier: GPL-3.0-or-later
// How much of what comes and goes by itself is on together. Each load is on for its share of the time, independently of
// the others (own: nobody knows their phases). Likely is the middle of what they draw together: half of the time it is
// no more. At worst all are on.
#pragma once

#include <span>

#include "units/quantity.h"

namespace cordreach::study {

struct ComesAndGoes {
  units::Current current;  // while it is on
  double onFraction = 1.0;
};

struct Coincidence {
  units::Current likely;  // median of their sum
  units::Current worst;   // all of them
  double together = 1.0;  // share of the time in which all are on; 1 of none
};

[[nodiscard]] Coincidence coincidenceOf(std::span<const ComesAndGoes> loads);

}  // namespace cordreach::study
