// SPDX-License-Identifier: GPL-3.0-or-later
// How many amps a cord may carry by its tag, its table ampacity, its plug and its connector. Tag, plug and connector
// are held against nameplate amps, the table against the larger of nameplate and solved amps.
#pragma once

#include <optional>

#include "rules/case.h"

namespace cordreach::rules {

struct CordAllowance {
  const char* by;  // "tag", "table", "plug", "connector"
  units::Current rated;
  units::Current used;

  [[nodiscard]] double fraction() const { return used / rated; }
};

// The one that is used most; none: nothing is known, or nothing flows.
[[nodiscard]] std::optional<CordAllowance> tightestAllowance(const CordCase& cord, const Case& in);

}  // namespace cordreach::rules
