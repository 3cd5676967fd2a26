// SPDX-License-Identifier: GPL-3.0-or-later
// More through a cord than its tag, its table ampacity, its plug or its connector allows. A machine's own cord too.
#include <algorithm>

#include "rules/all_rules.h"
#include "rules/cord_allowance.h"
#include "rules/finding_builder.h"
#include "study/assumptions.h"

namespace cordreach::rules {

Findings cordOverTag(const Case& in, const Rule& rule) {
  Findings found;
  for (const CordCase& cord : in.cords()) {
    const auto limit = tightestAllowance(cord, in);
    if (!limit || !exceeds(limit->fraction(), rule.limitFraction())) continue;
    FindingBuilder finding(rule);
    finding.about(cord.link);
    for (const HookupCase* user : cord.users) {
      finding.about(*user, in);
      const units::Current plate = study::plateOf(*user->inlet);
      finding.why("share.machine",
                  {text("machine", user->machine->name), amperes("plate_a", plate),
                   amperes("current_a", user->answer->current.likely)},
                  std::min(1.0, plate / std::max(cord.answer->plateSum, plate)));
    }
    finding.with(text("rated_by", limit->by)).with(amperes("rated_a", limit->rated));
    finding.with(amperes("used_a", limit->used)).with(amperes("plate_a", cord.answer->plateSum));
    finding.with(amperes("current_a", cord.answer->current.likely));
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
