// SPDX-License-Identifier: GPL-3.0-or-later
// What kind of socket a plug is in, and when it has power.
#pragma once

#include <optional>
#include <string>

#include "rules/case.h"

namespace cordreach::rules {

// Key of the receptacle table of that socket; empty when unknown.
[[nodiscard]] std::string receptacleOf(const site::Socket& socket, const site::Site& site);

// How many contacts, each a receptacle, the circuit feeds.
[[nodiscard]] std::size_t receptaclesOn(const site::Site& site, const site::CircuitId& circuit);

// Through all those hours. Hours that nobody said are not taken to be those with power.
[[nodiscard]] bool isPoweredThrough(const site::Contact& contact, const std::optional<site::Hours>& hours);

}  // namespace cordreach::rules
