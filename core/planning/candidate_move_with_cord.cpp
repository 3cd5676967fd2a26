// SPDX-License-Identifier: GPL-3.0-or-later
// Another outlet, through an extension that reaches.
#include "planning/candidate.h"
#include "planning/cart.h"
#include "planning/causes.h"
#include "planning/outlet_choice.h"
#include "rules/finding_builder.h"
#include "rules/protection.h"

namespace cordreach::planning {

namespace {

const site::Cord* cordTo(const OutletChoice& choice, const Plugging& plugging, const site::Site& site) {
  const units::Length own = plugging.inlet->cord.length->value;
  CordWish wish{choice.needed > own ? choice.needed - own : units::Length{}, choice.contact->receptacle, false};
  if (plugging.machine->wet && !plugging.inlet->cord.groundFaultDevice) {
    const auto there = rules::protectionAt(*choice.outlet, *choice.contact, site);
    wish.groundFault = there == rules::Protection::None || there == rules::Protection::Unknown;
  }
  const auto cords = cordsFor(plugging, site, wish);
  return cords.empty() ? nullptr : cords.front();
}

}  // namespace

Candidates movesWithCord(const Trouble& trouble) {
  const Plugging plugging = pluggingOf(trouble.hookup, trouble.site);
  if (plugging.inlet == nullptr || !plugging.inlet->cord.length) return {};
  OutletWish wish;
  if (isOverload(trouble.finding.code) && plugging.circuit != nullptr) wish.notOn = plugging.circuit->id;
  Candidates candidates;
  for (const OutletChoice& choice : outletsFor(plugging, trouble.site, wish)) {
    if (candidates.size() == 2) break;
    if (choice.outlet == plugging.outlet) continue;  // that is another cord, not another outlet
    const site::Cord* cord = cordTo(choice, plugging, trouble.site);
    if (cord == nullptr || choice.needed <= plugging.inlet->cord.length->value) continue;
    std::vector<site::AnyChange> changes = replug(plugging, site::CordSocket{cord->id, 0}, trouble.site);
    changes.emplace_back(
        site::Change<site::ExtensionUse>{std::nullopt, newUse(*cord, trouble.hookup, choice.socket(), trouble.site)});
    candidates.push_back({"move.outlet_with_cord",
                          {rules::text("machine", plugging.machine->name), rules::text("inlet", plugging.inlet->name),
                           rules::text("outlet", choice.outlet->label), rules::text("contact", choice.contact->name),
                           rules::text("cord", cord->label)},
                          {"hookup.move", std::move(changes)},
                          {trouble.hookup.id}});
  }
  return candidates;
}

}  // namespace cordreach::planning
