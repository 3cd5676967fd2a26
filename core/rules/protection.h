// SPDX-License-Identifier: GPL-3.0-or-later
// Which ground-fault device stands between the source and a hookup.
#pragma once

#include "rules/case.h"

namespace cordreach::rules {

enum class Protection { None, Unknown, Breaker, Receptacle, InLine };

// Unknown: the circuit is not known, or no run is drawn to the outlet while a ground-fault receptacle is on its
// circuit.
[[nodiscard]] Protection protectionOf(const HookupCase& hookup, const site::Site& site);

// Of whatever is plugged straight into that contact.
[[nodiscard]] Protection protectionAt(const site::Outlet& outlet, const site::Contact& contact, const site::Site& site);

}  // namespace cordreach::rules
