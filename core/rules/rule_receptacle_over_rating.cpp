// SPDX-License-Identifier: GPL-3.0-or-later
// More through one receptacle than it is made for.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "rules/ratings.h"
#include "rules/socket_load.h"
#include "study/assumptions.h"

namespace cordreach::rules {

namespace {

void judgeLoad(const SocketLoad& load, const Case& in, const Rule& rule, Findings& found) {
  const auto rated = receptacleRating(load.receptacle);
  if (!rated || !exceeds(load.plateSum.si(), rated->si() * rule.limitFraction())) return;
  FindingBuilder finding(rule);
  if (load.machine != nullptr) {
    finding.subject(SubjectKind::Machine, load.machine->id.text()).with(text("socket_of", load.machine->name));
  } else {
    finding.about(*load.worst->outlet);
  }
  finding.about(*load.worst, in).colours(load.users);
  finding.with(text("receptacle", load.receptacle)).with(amperes("plate_a", load.plateSum));
  finding.with(amperes("receptacle_rating_a", *rated));
  for (const HookupCase* user : load.users) {
    if (user->machine == load.machine) continue;
    const units::Current plate = study::plateOf(*user->inlet);
    finding.why("share.machine", {text("machine", user->machine->name), amperes("plate_a", plate)},
                plate / load.plateSum);
  }
  finding.why("receptacle.rated", {amperes("receptacle_rating_a", *rated)});
  found.push_back(finding.done());
}

}  // namespace

Findings receptacleOverRating(const Case& in, const Rule& rule) {
  Findings found;
  for (const SocketLoad& load : contactLoads(in)) judgeLoad(load, in, rule, found);
  for (const SocketLoad& load : passThroughLoads(in)) judgeLoad(load, in, rule, found);
  return found;
}

}  // namespace cordreach::rules
