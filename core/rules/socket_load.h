// SPDX-License-Identifier: GPL-3.0-or-later
// What is fed through one receptacle of a wall or of a machine, by nameplate.
#pragma once

#include <string>
#include <vector>

#include "rules/case.h"

namespace cordreach::rules {

struct SocketLoad {
  std::string receptacle;
  units::Current plateSum;
  const site::Machine* machine = nullptr;  // whose pass-through socket; none: an outlet's contact
  const HookupCase* worst = nullptr;       // whose answer gives the sum
  std::vector<const HookupCase*> users;
};

// Contacts of outlets that something is plugged into.
[[nodiscard]] std::vector<SocketLoad> contactLoads(const Case& in);

// Pass-through sockets of machines, taken together a machine: what its cord carries beyond its own plate.
[[nodiscard]] std::vector<SocketLoad> passThroughLoads(const Case& in);

}  // namespace cordreach::rules
