// SPDX-License-Identifier: GPL-3.0-or-later
// What to do where no cord will do: another outlet of the building, nearer or on another circuit.
#pragma once

#include <optional>

#include "planning/cord_choice.h"

namespace cordreach::planning {

struct CordInstead {
  SiteContact at;
  units::Length distance;  // from there to the work, followed along the plan
  CordAdvice advice;       // sound: no extension is needed, or one is chosen
};

// The nearest outlet at which the same machine reaches the same work soundly, tried by the same study and rules; none:
// the question is of no described building, or nothing near does. Outlets are offered as outletsFor() offers them.
[[nodiscard]] std::optional<CordInstead> insteadOf(const CordQuestion& question, const site::Place& work);

}  // namespace cordreach::planning
