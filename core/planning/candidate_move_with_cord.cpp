// SPDX-License-Identifier: GPL-3.0-or-later
// Another outlet, through an extension that reaches; or the same one, through an extension with a ground-fault device.
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

Candidate through(const site::Cord& cord, const site::Outlet& outlet, const site::Contact& contact,
                  const Plugging& plugging, const site::Site& site) {
  std::vector<site::AnyChange> changes = replug(plugging, site::CordSocket{cord.id, 0}, site);
  changes.emplace_back(site::Change<site::ExtensionUse>{
      std::nullopt, newUse(cord, *plugging.hookup, site::OutletSocket{outlet.id, contact.name}, site)});
  return {"move.outlet_with_cord",
          {rules::text("machine", plugging.machine->name), rules::text("inlet", plugging.inlet->name),
           rules::text("outlet", outlet.label), rules::text("contact", contact.name), rules::text("cord", cord.label)},
          {"hookup.move", std::move(changes)},
          {plugging.hookup->id}};
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
    candidates.push_back(through(*cord, *choice.outlet, *choice.contact, plugging, trouble.site));
  }
  return candidates;
}

Candidates throughDevice(const Trouble& trouble) {
  const Plugging plugging = pluggingOf(trouble.hookup, trouble.site);
  if (plugging.inlet == nullptr || plugging.contact == nullptr || plugging.chain.size() != 1) return {};
  Candidates candidates;
  for (const site::Cord* cord : cordsFor(plugging, trouble.site, {{}, plugging.contact->receptacle, true})) {
    if (candidates.size() == 2) break;
    candidates.push_back(through(*cord, *plugging.outlet, *plugging.contact, plugging, trouble.site));
  }
  return candidates;
}

}  // namespace cordreach::planning
