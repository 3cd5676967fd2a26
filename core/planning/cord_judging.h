// SPDX-License-Identifier: GPL-3.0-or-later
// One way of plugging in, judged by the same study and rules as any site, once for each breaker that it may be.
#pragma once

#include <optional>
#include <vector>

#include "planning/cord_limits.h"
#include "planning/cord_question.h"
#include "rules/finding.h"
#include "study/answer.h"

namespace cordreach::planning {

struct JudgedCase {
  study::HookupAnswer answer;
  rules::Severity verdict;
  std::optional<rules::Finding> worst;  // that stands behind the verdict
  std::vector<LimitUse> limits;
};

// With that extension or, null, without; in the order of likelyBreakers(). Never empty: a contact of a described
// building has one case.
[[nodiscard]] std::vector<JudgedCase> judgeCases(const CordQuestion& question, const site::Cord* extension);

[[nodiscard]] const JudgedCase& strictest(const std::vector<JudgedCase>& cases);

}  // namespace cordreach::planning
