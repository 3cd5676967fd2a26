// SPDX-License-Identifier: GPL-3.0-or-later
// What one circuit carries in one state of its panel, and who draws it.
#pragma once

#include <vector>

#include "site/site.h"
#include "study/answer.h"
#include "study/panel_states.h"

namespace cordreach::study {

struct CircuitLoad {
  Band<units::Current> current;   // largest pole
  units::Current withoutCycling;  // what is left when everything that cycles is off
  units::Current likely;          // what is left when only the mostly-off cycling loads are off
  units::Current neutral;
  units::Temperature wireTemperature;
  std::vector<Share> shares;                    // largest first
  std::optional<units::Duration> longestCycle;  // longest time that one of its cycling loads stays on

  [[nodiscard]] units::Current plateSum() const;
  [[nodiscard]] units::Current continuousSum() const;
};

// The poles of a circuit in the network, by the site's own words for it.
struct Poles {
  std::size_t circuit = 0;
  std::size_t first = 0;
  std::size_t count = 1;
};

[[nodiscard]] CircuitLoad loadOf(const site::Site& site, const PanelState& state, const Poles& poles);

}  // namespace cordreach::study
