// SPDX-License-Identifier: GPL-3.0-or-later
// A hookup through the planned day: each of its quantities at the moment when that quantity is worst.
#pragma once

#include <map>
#include <optional>

#include "site/site.h"
#include "study/answer.h"
#include "study/circuit_answer.h"
#include "study/panel_states.h"

namespace cordreach::study {

// Before anything is known of it but what the plan says.
[[nodiscard]] HookupAnswer blankAnswerOf(const site::Hookup& hookup);

// None: it is never plugged into what these panels feed.
[[nodiscard]] std::optional<HookupAnswer> hookupAnswerOf(const site::Site& site, const PanelStates& states,
                                                         const site::Hookup& hookup,
                                                         const std::map<std::size_t, CircuitDay>& supposedDays,
                                                         const std::map<site::CircuitId, CircuitDay>& days);

}  // namespace cordreach::study
