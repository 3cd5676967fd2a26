// SPDX-License-Identifier: GPL-3.0-or-later
// A jacket too hot to hold.
#include "rules/all_rules.h"
#include "rules/cord_heat.h"

namespace cordreach::rules {

Findings cordJacketOver60(const Case& in, const Rule& rule) {
  Findings found;
  for (const CordCase& cord : in.cords()) {
    if (!cord.answer->surface || cord.answer->surface->likely.celsius() <= rule.limitValue()) continue;
    FindingBuilder finding(rule);
    finding.with(number("limit_c", rule.limitValue()));
    aboutHeat(finding, cord, in);
    whyHot(finding, cord);
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
