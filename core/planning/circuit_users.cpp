// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/circuit_users.h"

#include <algorithm>

#include "planning/plug.h"
#include "study/assumptions.h"

namespace cordreach::planning {

std::vector<CircuitUser> circuitUsers(const site::Site& site, const site::CircuitId& circuit,
                                      const std::optional<site::Hours>& hours,
                                      const std::optional<site::HookupId>& except) {
  std::vector<CircuitUser> users;
  for (const site::FixedLoad& load : site.all<site::FixedLoad>()) {
    if (load.circuit != circuit || load.off || !rules::together(load.hours, hours)) continue;
    users.push_back({{}, load.id, load.name, study::plateOf(load), load.hours});
  }
  for (const site::Hookup& hookup : site.all<site::Hookup>()) {
    if (hookup.id == except || hookup.off || !rules::together(hookup.hours, hours)) continue;
    const Plugging there = pluggingOf(hookup, site);
    if (there.circuit == nullptr || there.circuit->id != circuit || there.inlet == nullptr) continue;
    users.push_back({hookup.id, {}, there.machine->name, study::plateOf(*there.inlet), hookup.hours});
  }
  std::stable_sort(users.begin(), users.end(), [](const auto& a, const auto& b) { return a.plate > b.plate; });
  return users;
}

}  // namespace cordreach::planning
