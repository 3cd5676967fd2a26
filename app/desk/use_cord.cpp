// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/use_cord.h"

#include "panels/fresh_id.h"
#include "planning/plug.h"

namespace cordreach::app {

std::optional<site::Edit> useCord(const CordInputs& inputs, const planning::CordCandidate& choice,
                                  const site::Site& site) {
  const bool ofSite = inputs.machineBy == MachineBy::Site && inputs.machine && inputs.outletBy == OutletBy::Site &&
                      inputs.outlet && choice.cord;
  const site::Cord* cord = ofSite ? site.find<site::Cord>(*choice.cord) : nullptr;
  if (cord == nullptr) return std::nullopt;
  site::Edit edit{"hookup.move", {}};
  const site::Socket socket = site::CordSocket{cord->id, 0};
  if (const site::Hookup* hookup = plannedHookup(inputs, site)) {
    edit.changes = planning::replug(planning::pluggingOf(*hookup, site), socket, site);
    edit.changes.emplace_back(
        site::Change<site::ExtensionUse>{std::nullopt, planning::newUse(*cord, *hookup, *inputs.outlet, site)});
    return edit;
  }
  const site::Hookup hookup{
      .id = freshId<site::Hookup>(site), .machine = *inputs.machine, .inlet = inputs.inletName, .socket = socket};
  edit.code = "hookup.add";
  edit.changes.emplace_back(site::Change<site::Hookup>{std::nullopt, hookup});
  edit.changes.emplace_back(
      site::Change<site::ExtensionUse>{std::nullopt, planning::newUse(*cord, hookup, *inputs.outlet, site)});
  return edit;
}

}  // namespace cordreach::app
