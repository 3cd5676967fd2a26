// SPDX-License-Identifier: GPL-3.0-or-later
// Where a hookup is plugged in now, and the edit that plugs it in elsewhere.
#pragma once

#include <optional>
#include <vector>

#include "rules/case.h"
#include "site/edit.h"

namespace cordreach::planning {

struct Plugging {
  const site::Hookup* hookup = nullptr;
  const site::Machine* machine = nullptr;
  const site::Inlet* inlet = nullptr;
  std::vector<rules::Link> chain;
  const site::ExtensionUse* extension =
      nullptr;  // the one its own plug is in; none: straight in an outlet or a machine
  const site::Cord* cord = nullptr;
  const site::Outlet* outlet = nullptr;  // where the chain ends
  const site::Contact* contact = nullptr;
  const site::Circuit* circuit = nullptr;
};

[[nodiscard]] Plugging pluggingOf(const site::Hookup& hookup, const site::Site& site);

// Everything plugged into that extension while it is used, this hookup among them.
[[nodiscard]] std::vector<const site::Hookup*> usersOf(const site::ExtensionUse& use, const site::Site& site);

// The changes that take the hookup's plug to another socket; its extension is put away when nobody else is on it.
[[nodiscard]] std::vector<site::AnyChange> replug(const Plugging& plugging, const site::Socket& socket,
                                                  const site::Site& site);

// A use of that cord under an id that the site does not have.
[[nodiscard]] site::ExtensionUse newUse(const site::Cord& cord, const site::Hookup& hookup,
                                        const site::OutletSocket& socket, const site::Site& site);

}  // namespace cordreach::planning
