// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a breaker acts within the time for which its current can flow.
#pragma once

#include "rules/finding_builder.h"

namespace cordreach::rules {

enum class BreakerVerdict { Holds, TripsEarly, Trips };  // early: on the earliest curve only

[[nodiscard]] BreakerVerdict verdictOn(const study::BreakerAnswer& breaker);

// A finding for each circuit, and each hookup on an unknown breaker, that gets exactly this verdict.
[[nodiscard]] Findings breakersThat(BreakerVerdict verdict, const Case& in, const Rule& rule);

}  // namespace cordreach::rules
