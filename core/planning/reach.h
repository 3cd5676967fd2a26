// SPDX-License-Identifier: GPL-3.0-or-later
// How far a machine gets over a floor on its own cord and at most one extension: from outlets, round the walls and,
// where corridor lines are drawn, along these only. A question of length alone: whether cord and breaker carry the
// machine is not asked here.
#pragma once

#include <optional>
#include <vector>

#include "base/progress.h"
#include "geometry/contour.h"
#include "planning/plug_start.h"
#include "site/site.h"

namespace cordreach::planning {

struct ReachWish {
  const site::Site& site;
  site::FloorId floor;
  site::MachineId machine;
  std::optional<site::CordMake> extension{};
  std::optional<site::OutletId> outlet{};  // none: from every outlet of the floor that is free to use
};

// Of several cords of a machine the shortest counts; of a guessed length its low end.
struct ReachLengths {
  units::Length own;
  units::Length extension;  // 0: none
  bool guessed = false;     // nobody measured one of them
  bool lighter = false;     // the extension has less copper than the machine's own cord: not for this machine

  [[nodiscard]] units::Length cord() const { return own + extension; }
  // Along the floor, with what goes up and down, round a corner and stays slack (kSlack) taken off; not below 0.
  [[nodiscard]] units::Length along() const;
};

struct Reach {
  ReachLengths lengths;
  std::size_t outlets = 0;                   // that it starts from
  std::size_t unknownBreakers = 0;           // of these, where nobody knows the breaker
  bool isDrawn = false;                      // the floor has walls or corridor lines; else nothing stands in the way
  std::vector<geometry::Outline> withSlack;  // as far as lengths.along()
  std::vector<geometry::Outline> stretched;  // as far as lengths.cord(): with no slack left
};

// The site has the machine, with at least one inlet.
[[nodiscard]] ReachLengths reachLengthsOf(const ReachWish& wish);
// Of the plug that would go into it.
[[nodiscard]] PlugStart reachStartOf(const ReachWish& wish, const site::Outlet& outlet);
// Stopped early, what was not yet walked is missing.
[[nodiscard]] Reach reachOf(const ReachWish& wish, const base::Progress& progress = {});

}  // namespace cordreach::planning
