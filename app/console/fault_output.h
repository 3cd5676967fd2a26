// SPDX-License-Identifier: GPL-3.0-or-later
// A checked fault as a line of JSON and as a page.
#pragma once

#include <string>

#include "planning/fault_check.h"
#include "text/phrasebook.h"

namespace cordreach::console {

[[nodiscard]] std::string faultJson(const planning::FaultQuestion& question, const planning::FaultCheck& check);
[[nodiscard]] std::string faultPage(const planning::FaultQuestion& question, const planning::FaultCheck& check,
                                    const text::Phrasebook& book, bool color);

}  // namespace cordreach::console
