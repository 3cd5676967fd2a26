// SPDX-License-Identifier: GPL-3.0-or-later
// Which kinds of edit can mend which finding.
#pragma once

#include <string_view>

#include "planning/candidate.h"

namespace cordreach::planning {

// Too much on a circuit: no cord cures that.
[[nodiscard]] bool isOverload(std::string_view code);

using Maker = Candidates (*)(const Trouble&);

// Cheapest kind first; empty for what only an electrician or the survey mends, and for notices.
[[nodiscard]] std::vector<Maker> makersFor(std::string_view code);

}  // namespace cordreach::planning
