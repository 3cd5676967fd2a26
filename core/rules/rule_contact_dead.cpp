// SPDX-License-Identifier: GPL-3.0-or-later
// A contact without power for some or all of the hookup's hours.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "rules/sockets.h"

namespace cordreach::rules {

Findings contactDead(const Case& in, const Rule& rule) {
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    if (hookup.contact == nullptr) continue;
    const bool powered = isPoweredThrough(*hookup.contact, hookup.hookup->hours);
    if (!hookup.contact->dead && powered) continue;
    FindingBuilder finding(rule);
    finding.about(hookup, in);
    if (hookup.contact->dead) {
      finding.why("contact.dead");
    } else {
      const site::Hours& hours = *hookup.contact->poweredHours;
      finding.with(seconds("powered_from_s", hours.from)).with(seconds("powered_until_s", hours.until));
      finding.why("contact.controlled",
                  {seconds("powered_from_s", hours.from), seconds("powered_until_s", hours.until)});
    }
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
