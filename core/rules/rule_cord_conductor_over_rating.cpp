// SPDX-License-Identifier: GPL-3.0-or-later
// The copper gets hotter than the insulation around it is made for.
#include "rules/all_rules.h"
#include "rules/cord_heat.h"

namespace cordreach::rules {

Findings cordConductorOverRating(const Case& in, const Rule& rule) {
  Findings found;
  for (const CordCase& cord : in.cords()) {
    if (!cord.answer->conductor || cord.answer->conductor->likely <= cord.answer->limit) continue;
    FindingBuilder finding(rule);
    aboutHeat(finding, cord, in);
    finding.happens(cord.answer->limitAt);
    whyHot(finding, cord);
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
