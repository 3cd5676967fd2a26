// SPDX-License-Identifier: GPL-3.0-or-later
// Which phases a panel has.
#pragma once

#include <cstddef>

#include "site/site.h"

namespace cordreach::site {

// 1, 2 (the legs of a split phase) or 3.
[[nodiscard]] constexpr std::size_t phaseCount(WiringSystem system) {
  switch (system) {
    case WiringSystem::SplitPhase120:
      return 2;
    case WiringSystem::Wye208:
    case WiringSystem::Wye400:
      return 3;
    case WiringSystem::Single120:
    case WiringSystem::Single230:
      return 1;
  }
  return 1;
}

// The supply at the head of a panel's feeders, which checkInvariants has seen to be there and free of loops.
[[nodiscard]] inline const Supply& supplyOf(const Site& site, const Panel& panel) {
  const Panel* head = &panel;
  while (head->fedFrom) head = &site.at<Panel>(*head->fedFrom);
  return site.at<Supply>(*head->supply);
}

}  // namespace cordreach::site
