// SPDX-License-Identifier: GPL-3.0-or-later
// The same cord, laid open on the floor.
#include "planning/candidate.h"
#include "planning/plug.h"
#include "rules/cord_heat.h"

namespace cordreach::planning {

Candidates unrollings(const Trouble& trouble) {
  const Plugging plugging = pluggingOf(trouble.hookup, trouble.site);
  Candidate candidate{
      "unroll", {rules::text("machine", plugging.machine->name)}, {"cord.unroll", {}}, {trouble.hookup.id}};
  for (const rules::Link& link : plugging.chain) {
    if (!rules::laidBadly(link)) continue;
    if (link.own()) {
      site::Hookup after = *link.hookup;
      after.ownCord = {};
      candidate.edit.changes.emplace_back(site::Change<site::Hookup>{*link.hookup, after});
    } else {
      site::ExtensionUse after = *link.use;
      after.laying = {};
      candidate.arguments.push_back(rules::text("cord", link.cord->label));
      candidate.edit.changes.emplace_back(site::Change<site::ExtensionUse>{*link.use, after});
    }
  }
  if (candidate.edit.changes.empty()) return {};
  return {candidate};
}

}  // namespace cordreach::planning
