// SPDX-License-Identifier: GPL-3.0-or-later
// Circuits that share a neutral are one bundle of poles in the network; most circuits are a group of one.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <set>
#include <vector>

#include "site/site.h"

namespace cordreach::study {

struct CircuitGroup {
  site::PanelId panel;
  std::vector<site::CircuitId> members;  // in order of id
  std::vector<std::size_t> phases;       // of the panel, one a pole of the bundle

  std::vector<std::size_t> firstPoles;  // the pole of the bundle that is each member's first
};

struct Groups {
  std::vector<CircuitGroup> groups;
  struct Place {
    std::size_t group;
    std::size_t member;
  };
  std::map<site::CircuitId, Place> places;
};

// The groups of every circuit whose panel is among `panels`. A circuit with no phase stated is taken to be on the
// first.
[[nodiscard]] Groups groupsOf(const site::Site& site, const std::set<site::PanelId>& panels);

}  // namespace cordreach::study
