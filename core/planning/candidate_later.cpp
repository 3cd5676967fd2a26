// SPDX-License-Identifier: GPL-3.0-or-later
// The same plug in the same socket, once the others on its circuit have finished.
#include <algorithm>

#include "planning/candidate.h"
#include "planning/plug.h"
#include "rules/finding_builder.h"

namespace cordreach::planning {

Candidates laterHours(const Trouble& trouble) {
  const site::Hookup& hookup = trouble.hookup;
  const Plugging plugging = pluggingOf(hookup, trouble.site);
  if (!hookup.hours || plugging.circuit == nullptr) return {};
  units::Duration free = hookup.hours->from;
  for (const site::Hookup& other : trouble.site.all<site::Hookup>()) {
    if (other.id == hookup.id || !other.hours || !other.hours->overlaps(*hookup.hours)) continue;
    if (pluggingOf(other, trouble.site).circuit == plugging.circuit) free = std::max(free, other.hours->until);
  }
  if (free == hookup.hours->from) return {};
  const site::Hours later{free, free + hookup.hours->length()};
  site::Hookup after = hookup;
  after.hours = later;
  std::vector<site::AnyChange> changes{site::Change<site::Hookup>{hookup, after}};
  if (plugging.extension != nullptr && plugging.extension->hours) {
    if (usersOf(*plugging.extension, trouble.site).size() > 1) return {};
    site::ExtensionUse use = *plugging.extension;
    use.hours = later;
    changes.emplace_back(site::Change<site::ExtensionUse>{*plugging.extension, use});
  }
  return {{"later",
           {rules::text("machine", plugging.machine->name), rules::seconds("from_s", later.from),
            rules::seconds("until_s", later.until)},
           {"hookup.hours", std::move(changes)},
           {hookup.id}}};
}

}  // namespace cordreach::planning
