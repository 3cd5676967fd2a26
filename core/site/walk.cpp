// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/walk.h"

namespace cordreach::site {

namespace {

using geometry::Point;

constexpr double kOnWallM = 0.01;
constexpr double kClearM = 2.0 * geometry::kWalkCell.in(units::metre);  // from a wall, so that its cells are left
constexpr double kLongWay = 3.0;  // a way that goes farther about than this is none (own)

// Moved away from the walls that it stands at, on the side on which it stands; in the line of a wall it stays.
Point clearOf(const std::vector<geometry::Segment>& walls, Point place) {
  for (const geometry::Segment& wall : walls) {
    const Point foot = geometry::nearestOn(wall, place);
    const double awayM = geometry::straightDistance(foot, place).in(units::metre);
    if (awayM < kOnWallM || awayM >= kClearM) continue;
    const double stretch = kClearM / awayM;
    place = {foot.xM + stretch * (place.xM - foot.xM), foot.yM + stretch * (place.yM - foot.yM)};
  }
  return place;
}

std::optional<units::Length> walked(const geometry::Ground& ground, Point from, Point to) {
  const Point start = clearOf(ground.walls, from);
  const Point end = clearOf(ground.walls, to);
  const units::Length aside = geometry::straightDistance(from, start) + geometry::straightDistance(to, end);
  // Most ways are little longer than two right angles; a wider field is made for the rest only.
  const units::Length usual = 1.5 * geometry::rightAngleDistance(from, to) + 10.0 * units::metre;
  for (const units::Length farthest : {usual, kLongWay * usual}) {
    if (const auto length = geometry::WalkField(ground, start, farthest).distanceTo(end)) return *length + aside;
  }
  return std::nullopt;
}

}  // namespace

geometry::Ground groundOf(const Floor& floor) {
  geometry::Ground ground;
  for (const Wall& wall : floor.walls) ground.walls.push_back({wall.from, wall.to});
  for (const CorridorLine& line : floor.corridorLines) {
    for (std::size_t i = 1; i < line.points.size(); ++i) {
      ground.corridors.push_back({line.points[i - 1], line.points[i]});
    }
  }
  return ground;
}

std::optional<Walk> walkBetween(const Site& site, const Place& from, const Place& to) {
  const Floor* floor = site.find<Floor>(from.floor);
  if (floor == nullptr || from.floor != to.floor) return std::nullopt;
  const units::Length rightAngles = geometry::rightAngleDistance(from.at, to.at);
  geometry::Ground ground = groundOf(*floor);
  if (ground.walls.empty() && ground.corridors.empty()) return Walk{rightAngles, WalkBy::Undrawn};
  if (!ground.corridors.empty()) {
    if (const auto length = walked(ground, from.at, to.at)) return Walk{*length, WalkBy::Corridors};
    ground.corridors.clear();
  }
  if (!ground.walls.empty()) {
    if (const auto length = walked(ground, from.at, to.at)) return Walk{*length, WalkBy::Walls};
  }
  return Walk{rightAngles, WalkBy::NoWay};
}

}  // namespace cordreach::site
