// SPDX-License-Identifier: GPL-3.0-or-later
// Contacts that could take a hookup, nearest first: judged cheaply by distance and by the circuit's spare amps, before
// any study. The outlet that it hangs on through an extension is one of them. Never offered: circuits nobody may use or
// must be asked for, breakers nobody knows, contacts that are dead, blocked, locked, loose, busy or without power for
// part of the hours.
#pragma once

#include <optional>
#include <vector>

#include "planning/plug.h"

namespace cordreach::planning {

struct OutletChoice {
  const site::Outlet* outlet;
  const site::Contact* contact;
  units::Length needed;  // of cord between the outlet and the work, slack included

  [[nodiscard]] site::OutletSocket socket() const { return {outlet->id, contact->name}; }
};

struct OutletWish {
  std::optional<units::Length> reach;    // leave out what is farther
  std::optional<site::CircuitId> notOn;  // leave out this circuit
  std::string plug;                      // what must fit; empty: anything
  bool needsProtection = false;          // a ground-fault device at the outlet
};

[[nodiscard]] std::vector<OutletChoice> outletsFor(const Plugging& plugging, const site::Site& site,
                                                   const OutletWish& wish);

// Whether the plan says where the hookup works.
[[nodiscard]] bool worksAtKnownPlace(const Plugging& plugging);

// Cord needed from an outlet to where the hookup works: right angles on the plan and 2.4 m of slack. Where it works
// unknown, it is at the outlet that it is plugged in at, and through an extension as far from there as that reaches.
// None: places are not known, or on different floors.
[[nodiscard]] std::optional<units::Length> neededCord(const Plugging& plugging, const site::Outlet& outlet);

// Slack at both ends: up and down, round a corner, and room to move (own).
inline constexpr units::Length kSlack = 2.4 * units::metre;
// Between which crews keep it: common practice, no source.
inline constexpr units::Length kLeastSlack = 6.0 * units::foot;
inline constexpr units::Length kMostSlack = 10.0 * units::foot;

}  // namespace cordreach::planning
