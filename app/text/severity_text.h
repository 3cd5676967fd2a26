// SPDX-License-Identifier: GPL-3.0-or-later
// The signal words of ANSI Z535, and OK.
#pragma once

#include <string>
#include <string_view>

#include "rules/finding.h"
#include "text/phrasebook.h"

namespace cordreach::text {

// One of the five words that files and scripts hold, the same in every language: "CAUTION".
[[nodiscard]] std::string_view severityCode(rules::Severity severity);

// The word as the language says it.
[[nodiscard]] std::string signalWord(const Phrasebook& book, rules::Severity severity);

}  // namespace cordreach::text
