// SPDX-License-Identifier: GPL-3.0-or-later
// What comes on by itself beside a hookup: a compressor's start meets the same breaker, and takes volts from the same
// wire, as the machine's own.
#pragma once

#include <map>
#include <vector>

#include "site/site.h"
#include "study/circuit_answer.h"
#include "study/panel_states.h"
#include "study/start_answer.h"

namespace cordreach::study {

// Of every fixed load that comes and goes by itself and draws more as it starts than running, each at the moment when
// its circuit carries most with a hookup on it; those of circuits without one are left out.
[[nodiscard]] std::vector<LoadStart> loadStartsOf(const site::Site& site, const PanelStates& states,
                                                  const std::map<site::CircuitId, CircuitDay>& days);

}  // namespace cordreach::study
