// SPDX-License-Identifier: GPL-3.0-or-later
// What is found of breakers that act within the time for which their current can flow.
#pragma once

#include "rules/finding_builder.h"
#include "study/breaker_answer.h"

namespace cordreach::rules {

// A finding for each circuit, main, and hookup on an unknown breaker that does exactly this.
[[nodiscard]] Findings breakersThat(study::WithinRun does, const Case& in, const Rule& rule);

}  // namespace cordreach::rules
