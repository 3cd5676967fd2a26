// SPDX-License-Identifier: GPL-3.0-or-later
// The machine's own plug in another outlet, without an extension.
#include "planning/candidate.h"
#include "planning/causes.h"
#include "planning/outlet_choice.h"
#include "rules/finding_builder.h"
#include "study/assumptions.h"

namespace cordreach::planning {

Candidates movesToOutlet(const Trouble& trouble) {
  const Plugging plugging = pluggingOf(trouble.hookup, trouble.site);
  if (plugging.inlet == nullptr || !plugging.inlet->cord.length) return {};
  OutletWish wish;
  wish.reach = plugging.inlet->cord.length->value;
  wish.plug = plugging.inlet->cord.plug;
  wish.needsProtection = plugging.machine->wet && !plugging.inlet->cord.groundFaultDevice;
  if (isOverload(trouble.finding.code) && plugging.circuit != nullptr) wish.notOn = plugging.circuit->id;
  Candidates candidates;
  for (const OutletChoice& choice : outletsFor(plugging, trouble.site, wish)) {
    if (candidates.size() == 2) break;
    candidates.push_back({"move.outlet",
                          {rules::text("machine", plugging.machine->name), rules::text("outlet", choice.outlet->label),
                           rules::text("contact", choice.contact->name)},
                          {"hookup.move", replug(plugging, choice.socket(), trouble.site)},
                          {trouble.hookup.id}});
  }
  return candidates;
}

}  // namespace cordreach::planning
