// SPDX-License-Identifier: GPL-3.0-or-later
// Some panels carried through the planned day: every different state they are in, solved and brought to rest at each
// corner, and the order in which the states follow each other.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "base/progress.h"
#include "site/site.h"
#include "study/load_book.h"
#include "study/moments.h"
#include "study/scene.h"
#include "study/wiring.h"
#include "timeline/settle.h"

namespace cordreach::study {

inline constexpr std::array kCorners = {Corner::Likely, Corner::Adverse, Corner::Favourable};

struct PanelState {
  std::array<Scene, kCorners.size()> scenes;
  std::array<timeline::Settled, kCorners.size()> settled;

  [[nodiscard]] const Scene& scene() const { return scenes.front(); }
  [[nodiscard]] const timeline::Settled& likely() const { return settled.front(); }
};

struct PanelMoment {
  std::optional<units::Duration> start;  // none: outside all hours
  std::optional<units::Duration> until;
  std::size_t state = 0;
};

struct PanelStates {
  std::array<Wiring, kCorners.size()> wirings;
  std::vector<PanelState> states;
  std::vector<PanelMoment> moments;

  [[nodiscard]] const Wiring& wiring() const { return wirings.front(); }
};

struct PanelStudyOptions {
  std::set<site::PanelId> panels;
  std::set<site::CircuitId> lostNeutral;
  bool likelyOnly = false;
  base::Progress progress{};
};

[[nodiscard]] PanelStates statesOf(const site::Site& site, const std::vector<Moment>& moments, LoadBook& book,
                                   const PanelStudyOptions& options);

}  // namespace cordreach::study
