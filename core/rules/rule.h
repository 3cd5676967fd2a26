// SPDX-License-Identifier: GPL-3.0-or-later
// A rule: its row of the rule table and the function that applies it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "rules/case.h"
#include "rules/finding.h"

namespace cordreach::rules {

struct Rule;

// What the rule finds, each finding made from the rule's code, severity and source.
using Findings = std::vector<Finding>;
using Apply = Findings (*)(const Case&, const Rule&);

struct Rule {
  std::string code;
  Severity severity;
  std::optional<double> limit;  // in `unit`; none: the limit is the thing's own rating, or there is none
  std::string unit;             // "percent", "c", "k", "a"
  tables::Source source;
  Apply apply;

  // The limit, which the table must state.
  [[nodiscard]] double limitValue() const { return limit.value(); }
  // Of a limit in per cent.
  [[nodiscard]] double limitFraction() const { return limitValue() / 100.0; }
};

}  // namespace cordreach::rules
