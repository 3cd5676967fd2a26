// SPDX-License-Identifier: GPL-3.0-or-later
// A plug that does not enter the socket it is planned into without being forced or adapted.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "rules/sockets.h"
#include "tables/receptacles.h"

namespace cordreach::rules {

Findings plugMisfit(const Case& in, const Rule& rule) {
  Findings found;
  for (const CordCase& cord : in.cords()) {
    const std::string& plug = cord.link.make().plug;
    const std::string socket = receptacleOf(*cord.link.socket, in.site());
    if (tables::plugFits(plug, socket).value_or(true)) continue;
    FindingBuilder finding(rule);
    finding.about(cord.link).about(*cord.at, in).colours(cord.users);
    finding.with(text("plug", plug)).with(text("socket", socket));
    found.push_back(finding.why("plug.into", {text("plug", plug), text("socket", socket)}).done());
  }
  return found;
}

}  // namespace cordreach::rules
