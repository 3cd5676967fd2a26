// SPDX-License-Identifier: GPL-3.0-or-later
// A point on a floor, metres from the plan's top left corner, x to the right and y down.
#pragma once

#include <cmath>

#include "units/quantity.h"

namespace cordreach::geometry {

struct Point {
  double xM = 0.0;
  double yM = 0.0;

  friend bool operator==(const Point&, const Point&) = default;
};

[[nodiscard]] inline units::Length straightDistance(Point a, Point b) {
  return std::hypot(a.xM - b.xM, a.yM - b.yM) * units::metre;
}

// Along two walls at right angles, as wire is usually pulled.
[[nodiscard]] inline units::Length rightAngleDistance(Point a, Point b) {
  return (std::abs(a.xM - b.xM) + std::abs(a.yM - b.yM)) * units::metre;
}

}  // namespace cordreach::geometry
