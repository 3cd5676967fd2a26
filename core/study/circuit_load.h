// SPDX-License-Identifier: GPL-3.0-or-later
// What one circuit, or all that hangs on one panel, carries in one state of its panel, and who draws it.
#pragma once

#include <vector>

#include "site/site.h"
#include "study/answer.h"
#include "study/panel_states.h"

namespace cordreach::study {

struct CircuitLoad {
  Band<units::Current> current{};   // largest pole
  units::Current withoutCycling{};  // what is left when everything that cycles is off
  units::Current likely{};          // what it is no more than half of the time, by the cycling loads' shares of it
  units::Current neutral{};
  units::Temperature wireTemperature;
  std::vector<Share> shares{};                    // largest first
  std::optional<units::Duration> longestCycle{};  // longest time that one of its cycling loads stays on
  double together = 1.0;                          // share of the time in which everything that cycles is on

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

// Of a panel's main: its largest phase, and whatever is on behind it on any. Neutral and wires are left out.
[[nodiscard]] CircuitLoad mainLoadOf(const site::Site& site, const PanelState& state, std::size_t panel);

}  // namespace cordreach::study
