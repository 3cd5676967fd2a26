// SPDX-License-Identifier: GPL-3.0-or-later
// What kind of socket a plug is in.
#pragma once

#include <string>

#include "rules/case.h"

namespace cordreach::rules {

// Key of the receptacle table of that socket; empty when unknown.
[[nodiscard]] std::string receptacleOf(const site::Socket& socket, const site::Site& site);

}  // namespace cordreach::rules
