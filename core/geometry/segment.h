// SPDX-License-Identifier: GPL-3.0-or-later
// A straight piece of wall or of corridor line, and its point that is nearest to a place.
#pragma once

#include <algorithm>

#include "geometry/point.h"

namespace cordreach::geometry {

struct Segment {
  Point from{};
  Point to{};
};

// Of a segment without length: where it is.
[[nodiscard]] inline Point nearestOn(const Segment& segment, Point place) {
  const double alongX = segment.to.xM - segment.from.xM;
  const double alongY = segment.to.yM - segment.from.yM;
  const double square = alongX * alongX + alongY * alongY;
  if (square <= 0.0) return segment.from;
  const double share = ((place.xM - segment.from.xM) * alongX + (place.yM - segment.from.yM) * alongY) / square;
  const double within = std::clamp(share, 0.0, 1.0);
  return {segment.from.xM + within * alongX, segment.from.yM + within * alongY};
}

}  // namespace cordreach::geometry
