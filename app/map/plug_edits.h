// SPDX-License-Identifier: GPL-3.0-or-later
// What people do with plugs, cords and switches, as edits of the plan. Each function answers with one edit, tried on a
// copy of the site; errors are those of site::apply. Shared by the map and the property panels; no Qt.
#pragma once

#include <optional>
#include <string>
#include <variant>

#include "base/result.h"
#include "site/edit.h"
#include "site/site.h"

namespace cordreach::app {

// A machine's own plug; without a hookup it hangs beside the machine.
struct MachinePlug {
  site::MachineId machine;
  std::string inlet;
  std::optional<site::HookupId> hookup{};

  friend bool operator==(const MachinePlug&, const MachinePlug&) = default;
};

// The plug of an extension that is in use.
struct ExtensionPlug {
  site::ExtensionUseId use;

  friend bool operator==(const ExtensionPlug&, const ExtensionPlug&) = default;
};

using HeldPlug = std::variant<MachinePlug, ExtensionPlug>;

using EditResult = base::Result<site::Edit>;

// "hookup.move", "hookup.add" or "extension.move". A plug pulled out of an extension that then feeds nobody takes the
// extension out of the plan with it. A new hookup is always on, at the machine's place.
[[nodiscard]] EditResult plugInto(const site::Site& site, const HeldPlug& plug, const site::OutletSocket& socket);

// "hookup.remove", with the extension that then feeds nobody.
[[nodiscard]] EditResult unplug(const site::Site& site, const site::HookupId& hookup);

// "hookup.cord": that cord and no other between the outlet and the machine's own cord; no cord: straight into the
// outlet. When the outlet's contact stays taken by an extension that others share, the next free contact is used.
// Error: plug.hangs_in_the_air, plug.no_free_contact.
[[nodiscard]] EditResult putCordBetween(const site::Site& site, const site::HookupId& hookup,
                                        const std::optional<site::CordId>& cord);

// "cord.lay".
[[nodiscard]] EditResult layExtension(const site::Site& site, const site::ExtensionUseId& use,
                                      const site::LayingOfCord& laying);
[[nodiscard]] EditResult layOwnCord(const site::Site& site, const site::HookupId& hookup,
                                    const site::LayingOfCord& laying);

// "hookup.switch" and "load.switch".
[[nodiscard]] EditResult switchMachine(const site::Site& site, const site::HookupId& hookup, bool off);
[[nodiscard]] EditResult switchLoad(const site::Site& site, const site::FixedLoadId& load, bool off);

// "hookup.pad"; none: the machine's own pad.
[[nodiscard]] EditResult changePad(const site::Site& site, const site::HookupId& hookup,
                                   const std::optional<site::PadId>& pad);

}  // namespace cordreach::app
