// SPDX-License-Identifier: GPL-3.0-or-later
// The change that mends a finding, tried before it is offered: an edit of the plan and what it then comes to.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "base/error.h"
#include "base/progress.h"
#include "rules/finding.h"
#include "site/edit.h"
#include "site/site.h"
#include "study/answer.h"

namespace cordreach::planning {

struct Remedy {
  std::string code;           // "move.outlet", "use.cord", "unroll", "out_of_service", ...
  base::Arguments arguments;  // what the words need: outlet, cord, machine names
  site::Edit edit;
  base::Arguments after;  // numbers after the change: current_a, voltage_v, conductor_c, trip_likely_s, ...
};

// At most five fixed edits are tried for a finding, each through the study of the panels it touches; offered are those
// after which the finding is gone and nothing of CAUTION or above is new. Cheapest change first. Empty: none found.
[[nodiscard]] std::vector<Remedy> remediesFor(const rules::Finding& finding, const site::Site& site,
                                              const std::vector<rules::Finding>& present,
                                              const base::Progress& progress = {});

// The same for every finding, in their order, trying no edit twice, and stopping at that many offers a finding.
[[nodiscard]] std::vector<std::vector<Remedy>> remediesForAll(const site::Site& site,
                                                              const std::vector<rules::Finding>& present,
                                                              const base::Progress& progress = {},
                                                              std::size_t offers = 2);

}  // namespace cordreach::planning
