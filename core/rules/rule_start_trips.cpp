// SPDX-License-Identifier: GPL-3.0-or-later
// The likely curve trips before the machine has come up to speed, at the likely end of its start.
#include "rules/all_rules.h"
#include "rules/start_finding.h"

namespace cordreach::rules {

Findings startTrips(const Case& in, const Rule& rule) {
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    const auto& start = hookup.answer->start;
    if (!start || !start->trip || !start->trip->likely) continue;
    FindingBuilder finding(rule);
    aboutStart(finding, hookup, in);
    finding.with(seconds("likely_s", *start->trip->likely));
    if (start->trip->earliest) finding.with(seconds("earliest_s", *start->trip->earliest));
    if (start->trip->latest) finding.with(seconds("latest_s", *start->trip->latest));
    if (hookup.answer->breaker.rating) {
      finding.why("breaker.rated", {amperes("rating_a", *hookup.answer->breaker.rating)});
    }
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
