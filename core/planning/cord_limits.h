// SPDX-License-Identifier: GPL-3.0-or-later
// How much of each limit a cord uses up, as shares that can be set beside each other: which one comes first as a cord
// gets longer or thinner. The verdict is the rules' business; a share never softens it.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "base/error.h"
#include "rules/case.h"

namespace cordreach::planning {

enum class CordLimit { Amps, Volts, Heat, Start, Clearing };

[[nodiscard]] std::string_view nameOf(CordLimit limit);  // "amps", "volts", "heat", "start", "clearing"

struct LimitUse {
  CordLimit limit;
  std::optional<double> used;  // 1 is the limit; none: beyond what the models can say, worse than any number
  base::Arguments arguments;   // the value and the limit it is held against, as the words need them
};

// Of the hookup's way from the outlet on, each limit once, in the order above; what can't be said is left out.
//   amps      the cord's amps over what it may carry: the extension's, without one the machine's own
//   volts     volts lost over volts that may be lost, from nominal to the low end of the machine's band
//   heat      rise over allowed rise of conductor, jacket or plug, whichever comes first
//   start     seconds of the likely run-up to 95 % of speed over 5 (own)
//   clearing  seconds until the likely breaker cuts off a fault at the cord's end over those that the cord stands
[[nodiscard]] std::vector<LimitUse> limitsOf(const rules::Case& in, const rules::HookupCase& hookup);

// The limit that a finding is about; none: it is about something else (the circuit, the plug, the copper's thickness, a
// machine that does not start at all).
[[nodiscard]] std::optional<CordLimit> limitOfFinding(std::string_view code);

// The limit that is used most; null: none is known.
[[nodiscard]] const LimitUse* nearest(const std::vector<LimitUse>& limits);

}  // namespace cordreach::planning
