// SPDX-License-Identifier: GPL-3.0-or-later
// So hot that no steady figure can be given: thermal runaway, or past where the model holds.
#include "rules/all_rules.h"
#include "rules/cord_heat.h"

namespace cordreach::rules {

Findings heatBeyondModel(const Case& in, const Rule& rule) {
  Findings found;
  for (const CordCase& cord : in.cords()) {
    if (!cord.answer->beyondModel()) continue;
    FindingBuilder finding(rule);
    aboutHeat(finding, cord, in);
    finding.happens(cord.answer->limitAt);
    whyHot(finding, cord);
    found.push_back(finding.with(number("model_limit_c", rule.limitValue())).done());
  }
  return found;
}

}  // namespace cordreach::rules
