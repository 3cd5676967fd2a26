// SPDX-License-Identifier: GPL-3.0-or-later
// What a breaker feeds, and what goes dark with it. As the survey says: a contact whose breaker nobody knows is on none
// of these, and may be on any.
#pragma once

#include <cstddef>
#include <vector>

#include "site/site.h"

namespace cordreach::site {

struct FedOutlet {
  OutletId outlet;
  std::vector<std::string> contacts;  // of it, that are on the circuit
  HowKnown how = HowKnown::Traced;    // of the least known of these
};

struct Feeding {
  CircuitId circuit;
  std::vector<FedOutlet> outlets;  // along the wire as far as it is drawn
  std::vector<FixedLoadId> loads;
  std::vector<MachineId> machines;  // plugged in at any time of the plan, through whatever cords; each once
};

[[nodiscard]] Feeding feedingOf(const Site& site, const CircuitId& circuit);

// The circuit itself and those whose handles move with it, by number.
[[nodiscard]] std::vector<CircuitId> switchedWith(const Site& site, const CircuitId& circuit);
// All of a panel and of the panels that it feeds, panel by panel.
[[nodiscard]] std::vector<CircuitId> circuitsBehind(const Site& site, const PanelId& panel);

[[nodiscard]] std::size_t contactsWithoutBreaker(const Site& site);

}  // namespace cordreach::site
