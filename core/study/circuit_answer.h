// SPDX-License-Identifier: GPL-3.0-or-later
// A circuit through the planned day, and at its worst moment.
#pragma once

#include <map>
#include <vector>

#include "site/site.h"
#include "study/answer.h"
#include "study/breaker_answer.h"
#include "study/circuit_load.h"
#include "study/panel_states.h"

namespace cordreach::study {

// One circuit of the network, moment by moment, as its breaker sees it.
struct CircuitDay {
  std::vector<CircuitLoad> loads;       // [state]
  std::vector<BreakerAnswer> breakers;  // [moment]
};

// Of a circuit of the site.
[[nodiscard]] CircuitDay dayOf(const site::Site& site, const PanelStates& states, const site::Circuit& circuit,
                               const Poles& poles);
// Of the supposed circuit of an outlet whose breaker is unknown.
[[nodiscard]] CircuitDay supposedDayOf(const site::Site& site, const PanelStates& states, const Poles& poles);

// Of a panel's main, whose rating is known.
[[nodiscard]] CircuitDay mainDayOf(const site::Site& site, const PanelStates& states, const site::Panel& panel,
                                   std::size_t index);

[[nodiscard]] CircuitAnswer worstOf(const site::Circuit& circuit, const PanelStates& states, const CircuitDay& day);

}  // namespace cordreach::study
