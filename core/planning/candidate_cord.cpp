// SPDX-License-Identifier: GPL-3.0-or-later
// Another extension at the same outlet. One whose earth pin is gone is put out of service with the same edit; one that
// was made with two wires is only taken out of this job.
#include "planning/candidate.h"
#include "planning/cart.h"
#include "planning/outlet_choice.h"
#include "rules/finding_builder.h"
#include "rules/protection.h"
#include "study/assumptions.h"

namespace cordreach::planning {

namespace {

// At least what lies between outlet and machine beyond the machine's own cord; where it works unknown to us, as long
// as the one there.
units::Length lengthNeeded(const Plugging& plugging) {
  const auto needed = worksAtKnownPlace(plugging) ? neededCord(plugging, *plugging.outlet) : std::nullopt;
  const auto& own = plugging.inlet->cord.length;
  if (needed && own && *needed > own->value) return *needed - own->value;
  if (needed && own) return {};
  return study::lengthOf(plugging.cord->make).value;
}

std::vector<site::AnyChange> swap(const Plugging& plugging, const site::Cord& cord, const site::Site& site) {
  site::ExtensionUse use = *plugging.extension;
  use.cord = cord.id;
  use.laying = {};
  std::vector<site::AnyChange> changes{site::Change<site::ExtensionUse>{*plugging.extension, use}};
  for (const site::Hookup* user : usersOf(*plugging.extension, site)) {
    site::Hookup after = *user;
    after.socket = site::CordSocket{cord.id, std::get<site::CordSocket>(user->socket).socket};
    changes.emplace_back(site::Change<site::Hookup>{*user, after});
  }
  return changes;
}

Candidate exchange(const Plugging& plugging, const site::Cord& cord, const site::Site& site) {
  Candidate candidate{"use.cord",
                      {rules::text("machine", plugging.machine->name), rules::text("cord", cord.label),
                       rules::text("old_cord", plugging.cord->label), rules::text("outlet", plugging.outlet->label)},
                      {"extension.exchange", swap(plugging, cord, site)},
                      {plugging.hookup->id}};
  for (const site::Hookup* user : usersOf(*plugging.extension, site)) {
    if (user->id != plugging.hookup->id) candidate.hookups.push_back(user->id);
  }
  if (plugging.cord->make.pin == site::Pin::Missing && !plugging.cord->outOfService) {
    site::Cord aside = *plugging.cord;
    aside.outOfService = site::OutOfService{"earth missing", {}, {}};
    candidate.code = "out_of_service";
    candidate.edit.code = "cord.out_of_service";
    candidate.edit.changes.emplace_back(site::Change<site::Cord>{*plugging.cord, aside});
  }
  return candidate;
}

}  // namespace

Candidates otherCords(const Trouble& trouble) {
  const Plugging plugging = pluggingOf(trouble.hookup, trouble.site);
  // A chain of extensions is not mended by exchanging its last.
  if (plugging.inlet == nullptr || plugging.extension == nullptr || plugging.outlet == nullptr) return {};
  if (!std::holds_alternative<site::OutletSocket>(plugging.extension->socket)) return {};
  CordWish wish{lengthNeeded(plugging), plugging.contact != nullptr ? plugging.contact->receptacle : "", false};
  if (plugging.machine->wet && !plugging.inlet->cord.groundFaultDevice && plugging.contact != nullptr) {
    const auto there = rules::protectionAt(*plugging.outlet, *plugging.contact, trouble.site);
    wish.groundFault = there == rules::Protection::None || there == rules::Protection::Unknown;
  }
  Candidates candidates;
  for (const site::Cord* cord : cordsFor(plugging, trouble.site, wish)) {
    if (candidates.size() == 2) break;
    candidates.push_back(exchange(plugging, *cord, trouble.site));
  }
  return candidates;
}

}  // namespace cordreach::planning
