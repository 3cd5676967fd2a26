// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/walk.h"

#include <gtest/gtest.h>

namespace cordreach::site {
namespace {

using units::metre;

const FloorId kFloor("f");

Site with(std::vector<Wall> walls, std::vector<CorridorLine> lines = {}) {
  Site site{.id = SiteId("s")};
  site.all<Floor>().put({.id = kFloor, .walls = std::move(walls), .corridorLines = std::move(lines)});
  site.all<Floor>().put({.id = FloorId("up"), .level = 1});
  return site;
}

Walk walkedIn(const Site& site, geometry::Point from, geometry::Point to) {
  return walkBetween(site, {kFloor, from}, {kFloor, to}).value();
}

// A room below y = 8 with its door at x = 20 to 21, and a corridor beyond it.
std::vector<Wall> roomWithDoor() {
  return {{{0, 8}, {20, 8}}, {{21, 8}, {40, 8}},  {{0, 0}, {40, 0}},
          {{0, 0}, {0, 12}}, {{40, 0}, {40, 12}}, {{0, 12}, {40, 12}}};
}

TEST(Walk, GoesRoundTheWallsThroughTheDoor) {
  const Walk walk = walkedIn(with(roomWithDoor()), {5, 4}, {5, 10});
  EXPECT_EQ(walk.by, WalkBy::Walls);
  const double throughM = std::hypot(15.5, 4.0) + std::hypot(15.5, 2.0);
  EXPECT_NEAR(walk.length.in(metre), throughM, 1.0);
}

TEST(Walk, ReachesAnOutletOnItsOwnSideOfTheWall) {
  const Site site = with(roomWithDoor());
  const Walk sameSide = walkedIn(site, {5, 8.1}, {5, 10});
  EXPECT_NEAR(sameSide.length.in(metre), 1.9, 0.6);
  const Walk otherSide = walkedIn(site, {5, 7.9}, {5, 10});
  EXPECT_GT(otherSide.length.in(metre), 25.0);
}

TEST(Walk, GoesAlongTheCorridorLinesWhereNoWallsAreDrawn) {
  const Walk walk = walkedIn(with({}, {{{{0, 0}, {20, 0}, {20, 20}}}}), {0, 0}, {20, 20});
  EXPECT_EQ(walk.by, WalkBy::Corridors);
  EXPECT_GT(walk.length.in(metre), 34.0);
  EXPECT_LT(walk.length.in(metre), 41.0);
}

TEST(Walk, FallsBackToTheWallsWhereNoCorridorLineLeads) {
  const Walk walk = walkedIn(with(roomWithDoor(), {{{{100, 100}, {120, 100}}}}), {5, 4}, {5, 10});
  EXPECT_EQ(walk.by, WalkBy::Walls);
}

TEST(Walk, SaysWhenNothingIsDrawnOrNoWayIsLeft) {
  const Walk plain = walkedIn(with({}), {1, 2}, {4, 6});
  EXPECT_EQ(plain, (Walk{7.0 * metre, WalkBy::Undrawn}));
  const Walk walledOff = walkedIn(with({{{5, -300}, {5, 300}}}), {0, 0}, {10, 0});
  EXPECT_EQ(walledOff, (Walk{10.0 * metre, WalkBy::NoWay}));
}

TEST(Walk, IsOnOneFloor) {
  const Site site = with({});
  EXPECT_FALSE(walkBetween(site, {kFloor, {}}, {FloorId("up"), {}}).has_value());
}

}  // namespace
}  // namespace cordreach::site
