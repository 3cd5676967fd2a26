// SPDX-License-Identifier: GPL-3.0-or-later
// What a fault at a cord's end comes to, and what is told of it.
#pragma once

#include "rules/finding_builder.h"

namespace cordreach::rules {

enum class FaultVerdict {
  Cleared,     // in time by each curve, or nothing is claimed
  LatestLate,  // only the latest curve lets a conductor pass its short-circuit limit
  LikelyLate,  // the likely curve does too
};

// None was studied: cleared.
[[nodiscard]] FaultVerdict verdictOn(const std::optional<study::FaultAnswer>& fault);

// Its current, the times of the breaker and of the damage as arguments; what makes it slow as reasons.
void aboutFault(FindingBuilder& finding, const study::FaultAnswer& fault, const HookupCase& hookup);

// Extensions at whose end a fault comes to that.
[[nodiscard]] Findings extensionsThat(FaultVerdict verdict, const Case& in, const Rule& rule);

}  // namespace cordreach::rules
