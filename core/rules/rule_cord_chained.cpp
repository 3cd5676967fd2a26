// SPDX-License-Identifier: GPL-3.0-or-later
// An extension plugged into anything but an outlet. A machine's own cord on one extension is not chaining, nor is a
// machine in another's pass-through socket.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"

namespace cordreach::rules {

Findings cordChained(const Case& in, const Rule& rule) {
  Findings found;
  for (const CordCase& cord : in.cords()) {
    if (cord.link.own() || std::holds_alternative<site::OutletSocket>(*cord.link.socket)) continue;
    FindingBuilder finding(rule);
    finding.about(cord.link).colours(cord.users);
    for (const Link& link : cord.at->chain) {
      if (link.use == cord.link.use) break;
      const bool machine = link.own();
      finding.why(machine ? "chain.machine" : "chain.extension",
                  {text("name", machine ? link.machine->name : link.cord->label)});
    }
    finding.about(*cord.at, in);
    found.push_back(finding.why("chain.extension", {text("name", cord.link.cord->label)}).done());
  }
  return found;
}

}  // namespace cordreach::rules
