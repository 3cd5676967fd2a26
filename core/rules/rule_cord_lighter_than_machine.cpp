// SPDX-License-Identifier: GPL-3.0-or-later
// An extension with less copper than the machine's own cord.
#include "rules/all_rules.h"
#include "rules/copper.h"
#include "rules/finding_builder.h"

namespace cordreach::rules {

Findings cordLighterThanMachine(const Case& in, const Rule& rule) {
  Findings found;
  for (const CordCase& cord : in.cords()) {
    if (cord.link.own() || !cord.link.make().size) continue;
    const units::WireSize size = cord.link.make().size->value;
    FindingBuilder finding(rule);
    finding.about(cord.link);
    bool lighter = false;
    for (const HookupCase* user : cord.users) {
      if (!user->inlet->cord.size || !isLighter(size, user->inlet->cord.size->value)) continue;
      lighter = true;
      finding.about(*user, in);
      finding.with(text("own_size", user->inlet->cord.size->value.name()));
      finding.why("cord.thin", {text("size", size.name()), text("own_size", user->inlet->cord.size->value.name()),
                                text("machine", user->machine->name)});
    }
    if (lighter) found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
