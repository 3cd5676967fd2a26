// SPDX-License-Identifier: GPL-3.0-or-later
// The answer of `cord` as JSON and as a page.
#pragma once

#include <string>

#include "planning/cord_choice.h"
#include "text/phrasebook.h"

namespace cordreach::console {

[[nodiscard]] std::string cordJson(const planning::CordAdvice& advice, const text::Phrasebook& book);
[[nodiscard]] std::string cordPage(const planning::CordAdvice& advice, const text::Phrasebook& book, bool color);

}  // namespace cordreach::console
