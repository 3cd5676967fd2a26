// SPDX-License-Identifier: GPL-3.0-or-later
// What `run` prints.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "study/day_run.h"
#include "text/phrasebook.h"

namespace cordreach::console {

// `chances`: [circuit of the run], the probability of a trip; none: not asked.
[[nodiscard]] std::string runJson(const study::DayRun& run, const std::vector<std::optional<double>>& chances);
[[nodiscard]] std::string runCsv(const study::DayRun& run);
[[nodiscard]] std::string runPage(const site::Site& site, const study::DayRun& run, const text::Phrasebook& book,
                                  bool color);

}  // namespace cordreach::console
