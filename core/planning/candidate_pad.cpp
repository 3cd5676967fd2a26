// SPDX-License-Identifier: GPL-3.0-or-later
// A pad that is made for the machine's speed.
#include <algorithm>

#include "planning/candidate.h"
#include "planning/plug.h"
#include "rules/finding_builder.h"

namespace cordreach::planning {

Candidates otherPads(const Trouble& trouble) {
  const Plugging plugging = pluggingOf(trouble.hookup, trouble.site);
  if (!plugging.machine->speed) return {};
  Candidates candidates;
  for (const site::Pad& pad : trouble.site.all<site::Pad>()) {
    if (!pad.ratedSpeed || pad.ratedSpeed->value < plugging.machine->speed->value || candidates.size() == 2) continue;
    site::Hookup after = trouble.hookup;
    after.pad = pad.id;
    candidates.push_back({"use.pad",
                          {rules::text("machine", plugging.machine->name), rules::text("pad", pad.name)},
                          {"pad.change", {site::Change<site::Hookup>{trouble.hookup, after}}},
                          {trouble.hookup.id}});
  }
  return candidates;
}

}  // namespace cordreach::planning
