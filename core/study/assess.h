// SPDX-License-Identifier: GPL-3.0-or-later
// Puts a site into network terms, runs it through its hours and gives the answer. The only room that knows both.
#pragma once

#include <optional>
#include <set>
#include <vector>

#include "base/progress.h"
#include "site/site.h"
#include "study/answer.h"

namespace cordreach::study {

struct StudyOptions {
  std::optional<std::set<site::PanelId>> panels;  // none: all; else only what these feed
  bool likelyOnly = false;                        // every band shrinks to its likely value: for trying many changes
  bool inTime = true;                             // what has hours is followed through the day, too
  std::set<site::CircuitId> lostNeutral;          // what if the neutral of these came off
  base::Progress progress{};
};

// The site must hold its invariants. Stopped early, what was not yet studied is missing from the answer.
[[nodiscard]] Answer assess(const site::Site& site, const StudyOptions& options = {});

}  // namespace cordreach::study
