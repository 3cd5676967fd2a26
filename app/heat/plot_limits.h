// SPDX-License-Identifier: GPL-3.0-or-later
// What the curves are held against, and how far their axes reach.
#pragma once

#include <vector>

#include "heat/heat_plot.h"

namespace cordreach::app {

inline constexpr double kHottestShownC = 160.0;  // higher is of no use to anybody

struct PlotLimit {
  units::Temperature at;
  const char* code;
  bool solid;
};

// The rating printed on the jackets, and on request the limits of hand and plastic.
[[nodiscard]] std::vector<PlotLimit> limitsOf(const HeatModel& model, const PlotWishes& wishes);
// The hottest of what is drawn.
[[nodiscard]] double hottestC(const study::Demonstration& demonstration, const PlotWishes& wishes);
// A round step that leaves at most that many ticks.
[[nodiscard]] double stepFor(double span, int most);

}  // namespace cordreach::app
