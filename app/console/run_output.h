// SPDX-License-Identifier: GPL-3.0-or-later
// What `run` prints.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "study/chances.h"
#include "study/day_run.h"
#include "text/phrasebook.h"

namespace cordreach::console {

[[nodiscard]] std::string_view wordOf(study::DayEventKind kind);  // as the JSON and the words have it: "over_rating"

using Chances = std::vector<std::optional<study::Chance>>;  // [circuit of the run], of a trip; none: not asked

[[nodiscard]] std::string runJson(const study::DayRun& run, const Chances& chances);
[[nodiscard]] std::string runCsv(const study::DayRun& run);
[[nodiscard]] std::string runPage(const site::Site& site, const study::DayRun& run, const Chances& chances,
                                  const text::Phrasebook& book, bool color);

}  // namespace cordreach::console
