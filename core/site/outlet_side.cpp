// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/outlet_side.h"

#include <cmath>
#include <limits>

#include "geometry/segment.h"

namespace cordreach::site {

namespace {

struct Foot {
  double distanceM = std::numeric_limits<double>::infinity();
  geometry::Point away{};  // from the wall to the point, length 1
};

Foot footOn(const Wall& wall, const geometry::Point& point) {
  const double lengthM = geometry::straightDistance(wall.from, wall.to).in(units::metre);
  if (lengthM <= 0.0) return {};
  const geometry::Point nearest = geometry::nearestOn({wall.from, wall.to}, point);
  const double awayX = point.xM - nearest.xM;
  const double awayY = point.yM - nearest.yM;
  const double distance = std::hypot(awayX, awayY);
  if (distance < 1e-6) {
    return {0.0, {(wall.from.yM - wall.to.yM) / lengthM, (wall.to.xM - wall.from.xM) / lengthM}};
  }
  return {distance, {awayX / distance, awayY / distance}};
}

std::optional<geometry::Point> inwardByWord(const std::string& wall) {
  if (wall == "north") return geometry::Point{0.0, 1.0};
  if (wall == "south") return geometry::Point{0.0, -1.0};
  if (wall == "west") return geometry::Point{1.0, 0.0};
  if (wall == "east") return geometry::Point{-1.0, 0.0};
  return std::nullopt;
}

}  // namespace

std::optional<geometry::Point> inwardOf(const Outlet& outlet, const std::vector<Wall>& walls) {
  if (const auto byWord = inwardByWord(outlet.wall)) return byWord;
  Foot best;
  for (const Wall& wall : walls) {
    const Foot foot = footOn(wall, outlet.place->at);
    if (foot.distanceM < best.distanceM) best = foot;
  }
  if (best.distanceM > kOnWall.in(units::metre)) return std::nullopt;
  return best.away;
}

}  // namespace cordreach::site
