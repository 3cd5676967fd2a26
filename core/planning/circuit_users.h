// SPDX-License-Identifier: GPL-3.0-or-later
// What else a circuit feeds at the same hours, as a person would list it: planned machines and fixed loads.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "site/site.h"

namespace cordreach::planning {

struct CircuitUser {
  std::optional<site::HookupId> hookup;  // one of the two
  std::optional<site::FixedLoadId> load;
  std::string name;
  units::Current plate;
  std::optional<site::Hours> hours;  // none: always, or nobody knows when
};

// What is not switched off and may be on together with those hours, largest plate first; without the hookup `except`.
[[nodiscard]] std::vector<CircuitUser> circuitUsers(const site::Site& site, const site::CircuitId& circuit,
                                                    const std::optional<site::Hours>& hours,
                                                    const std::optional<site::HookupId>& except);

}  // namespace cordreach::planning
