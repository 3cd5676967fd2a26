// SPDX-License-Identifier: GPL-3.0-or-later
// A panel as its directory shows it: spaces numbered in pairs, odd ones at the left and even ones at the right.
#pragma once

#include <cstddef>
#include <vector>

#include "site/site.h"

namespace cordreach::site {

struct ScheduleSpace {
  int number = 0;                   // from 1
  std::vector<CircuitId> circuits;  // none: empty; several: a tandem, or two that claim one space
  bool continues = false;           // a further pole of the breaker two spaces before
};

struct PanelSchedule {
  std::vector<ScheduleSpace> spaces;  // of an even number, in the order of their numbers
  std::vector<CircuitId> elsewhere;   // circuits whose number names no space
};

// The spaces that a circuit's number names: "5" is 5, with two poles 5 and 7; "1/3", "1-3" and "1,3" are 1 and 3; "5A"
// and "5B" are both 5. Empty: it names none between 1 and kMostSpaces.
inline constexpr int kMostSpaces = 120;
[[nodiscard]] std::vector<int> spacesOf(const Circuit& circuit);

// As many spaces as the panel is said to have, and no fewer than are used.
[[nodiscard]] PanelSchedule scheduleOf(const Site& site, const PanelId& panel);

// The phase behind a space: they change from row to row (common practice of panelboards).
[[nodiscard]] std::size_t phaseOfSpace(int space, std::size_t phaseCount);

}  // namespace cordreach::site
