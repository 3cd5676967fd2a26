// SPDX-License-Identifier: GPL-3.0-or-later
// Runs every rule over a site and its answer.
#pragma once

#include <vector>

#include "rules/finding.h"
#include "site/site.h"
#include "study/answer.h"

namespace cordreach::rules {

// Worst first; among equals in the order of the rule table, then of subjects. The same input gives the same list.
[[nodiscard]] std::vector<Finding> judge(const site::Site& site, const study::Answer& answer);

// The worst finding that colours this hookup; Ok when there is none.
[[nodiscard]] Severity verdictOf(const site::HookupId& hookup, const std::vector<Finding>& findings);

// The worst of all that is not accepted.
[[nodiscard]] Severity worstOf(const std::vector<Finding>& findings);

}  // namespace cordreach::rules
