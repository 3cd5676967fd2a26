// SPDX-License-Identifier: GPL-3.0-or-later
// All rules in one list, worst first; among equals the one that names the cause before the one that names an effect.
// The rows stand in resources/tables/rules.csv; docs/severity.md says the same in words.
#pragma once

#include <string_view>
#include <vector>

#include "rules/rule.h"

namespace cordreach::rules {

[[nodiscard]] const std::vector<Rule>& ruleTable();

// The rule of that code, which must exist.
[[nodiscard]] const Rule& ruleOf(std::string_view code);

// Its place in the table, 0 first.
[[nodiscard]] std::size_t orderOf(std::string_view code);

}  // namespace cordreach::rules
