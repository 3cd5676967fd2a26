// SPDX-License-Identifier: GPL-3.0-or-later
// More than the code plans for a receptacle that has others on its circuit: 12 A of 15, 16 A of 20.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "rules/ratings.h"
#include "rules/socket_load.h"
#include "study/assumptions.h"
#include "tables/code_limits.h"

namespace cordreach::rules {

Findings receptacleTwelveAmps(const Case& in, const Rule& rule) {
  Findings found;
  for (const SocketLoad& load : contactLoads(in)) {
    const site::Circuit* circuit = load.worst->circuit;
    const auto rated = receptacleRating(load.receptacle);
    if (circuit == nullptr || !rated || in.receptaclesOn(circuit->id) < 2) continue;
    const auto planned = tables::cordAndPlugLimit(*rated);
    if (!planned || !exceeds(load.plateSum.si(), planned->value.si())) continue;
    FindingBuilder finding(rule);
    finding.about(*load.worst->outlet).about(*load.worst, in).colours(load.users);
    finding.with(text("receptacle", load.receptacle)).with(amperes("plate_a", load.plateSum));
    finding.with(amperes("limit_a", planned->value));
    for (const HookupCase* user : load.users) {
      const units::Current plate = study::plateOf(*user->inlet);
      finding.why("share.machine", {text("machine", user->machine->name), amperes("plate_a", plate)},
                  plate / load.plateSum);
    }
    finding.why("receptacle.rated", {amperes("receptacle_rating_a", *rated)});
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
