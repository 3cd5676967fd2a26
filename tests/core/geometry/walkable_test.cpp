// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/walkable.h"

#include <gtest/gtest.h>

#include <random>

namespace cordreach::geometry {
namespace {

using units::metre;

double metresTo(const Ground& ground, Point from, Point to, double farthestM = 60.0) {
  const auto distance = WalkField(ground, from, farthestM * metre).distanceTo(to);
  return distance ? distance->in(metre) : -1.0;
}

// A wall from far north to far south of x = 5 with one gap.
Ground wallWithGap(double gapFromM, double gapToM) {
  return {.walls = {{{5.0, -100.0}, {5.0, gapFromM}}, {{5.0, gapToM}, {5.0, 100.0}}}};
}

TEST(Walkable, OverOpenGroundIsStraight) {
  const WalkField field({}, Point{}, 30.0 * metre);
  std::mt19937 random(3);
  std::uniform_real_distribution<double> place(-20.0, 20.0);
  for (int i = 0; i < 2000; ++i) {
    const Point to{place(random), place(random)};
    const double straightM = straightDistance({}, to).in(metre);
    const double walkedM = field.distanceTo(to)->in(metre);
    EXPECT_GE(walkedM, straightM - 0.2) << to.xM << " " << to.yM;
    EXPECT_LE(walkedM, straightM * 1.028 + 0.2) << to.xM << " " << to.yM;
  }
}

TEST(Walkable, GoesThroughTheDoor) {
  const Ground ground = wallWithGap(9.0, 10.0);
  const double throughM = std::hypot(5.0, 9.5) + std::hypot(5.0, 9.5);
  EXPECT_NEAR(metresTo(ground, {0.0, 0.0}, {10.0, 0.0}), throughM, 0.8);
}

TEST(Walkable, DoesNotGoThroughWalls) {
  const Ground ground{.walls = {{{5.0, -100.0}, {5.0, 100.0}}}};
  EXPECT_EQ(metresTo(ground, {0.0, 0.0}, {10.0, 0.0}), -1.0);
  const Ground slanting{.walls = {{{-100.0, -93.7}, {100.0, 106.3}}}};
  EXPECT_EQ(metresTo(slanting, {0.0, 0.0}, {0.0, 10.0}), -1.0);
}

TEST(Walkable, BeginsAtAnOutletInTheWall) {
  const Ground ground{.walls = {{{5.0, -100.0}, {5.0, 100.0}}}};
  EXPECT_NEAR(metresTo(ground, {5.0, 0.0}, {0.0, 0.0}), 5.0, 0.3);
  EXPECT_NEAR(metresTo(ground, {0.0, 0.0}, {5.0, 3.0}), std::hypot(5.0, 3.0), 0.5);
}

TEST(Walkable, EndsWhereTheCordEnds) {
  EXPECT_EQ(metresTo({}, {}, {10.0, 0.0}, 9.0), -1.0);
  EXPECT_NEAR(metresTo({}, {}, {10.0, 0.0}, 10.1), 10.0, 0.1);
}

TEST(Walkable, KeepsToTheCorridorLines) {
  const Ground ground{.corridors = {{{0.0, 0.0}, {20.0, 0.0}}, {{20.0, 0.0}, {20.0, 20.0}}},
                      .corridorHalfWidth = 0.5 * metre};
  EXPECT_NEAR(metresTo(ground, {0.0, 0.0}, {20.0, 20.0}), 40.0, 1.0);
  EXPECT_EQ(metresTo(ground, {0.0, 0.0}, {0.0, 10.0}), -1.0);
}

TEST(Walkable, ALongerCordReachesNoLess) {
  const Ground ground = wallWithGap(3.0, 4.0);
  const auto reached = [&](double farthestM) {
    const WalkField field(ground, Point{0.0, 0.0}, farthestM * metre);
    return std::count_if(field.metres().begin(), field.metres().end(), [](float metres) { return metres >= 0.0F; });
  };
  EXPECT_LT(reached(5.0), reached(10.0));
  EXPECT_LT(reached(10.0), reached(15.0));
}

TEST(Walkable, TheWayIsAsLongAsTheDistanceAndCrossesNoWall) {
  const Ground ground = wallWithGap(9.0, 10.0);
  const WalkField field(ground, Point{0.0, 0.0}, 60.0 * metre);
  const std::vector<Point> way = field.wayTo({10.0, 0.0});
  ASSERT_GE(way.size(), 3u);
  EXPECT_EQ(way.front(), (Point{0.0, 0.0}));
  EXPECT_EQ(way.back(), (Point{10.0, 0.0}));
  double lengthM = 0.0;
  for (std::size_t i = 1; i < way.size(); ++i) {
    lengthM += straightDistance(way[i - 1], way[i]).in(metre);
    if ((way[i - 1].xM - 5.0) * (way[i].xM - 5.0) < 0.0) {
      const double share = (5.0 - way[i - 1].xM) / (way[i].xM - way[i - 1].xM);
      const double crossingM = way[i - 1].yM + share * (way[i].yM - way[i - 1].yM);
      EXPECT_GT(crossingM, 9.0 - 0.25);
      EXPECT_LT(crossingM, 10.0 + 0.25);
    }
  }
  EXPECT_LE(lengthM, field.distanceTo({10.0, 0.0})->in(metre) + 0.3);
  EXPECT_TRUE(field.wayTo({100.0, 0.0}).empty());
}

TEST(Walkable, OfSeveralStartsTheNearestCounts) {
  const Ground ground = wallWithGap(3.0, 4.0);
  const Point left{0.0, 0.0};
  const Point right{10.0, -1.0};
  const WalkField both(ground, {left, right}, 20.0 * metre);
  const WalkField fromLeft(ground, left, 20.0 * metre);
  const WalkField fromRight(ground, right, 20.0 * metre);
  for (const Point to : {Point{-4.0, 2.0}, Point{4.0, 3.0}, Point{6.0, 6.0}, Point{12.0, -4.0}, Point{6.0, -5.0}}) {
    const double nearestM = std::min(fromLeft.distanceTo(to).value_or(99.0 * metre).in(metre),
                                     fromRight.distanceTo(to).value_or(99.0 * metre).in(metre));
    EXPECT_NEAR(both.distanceTo(to).value().in(metre), nearestM, 0.4) << to.xM << " " << to.yM;
  }
  EXPECT_EQ(both.wayTo({12.0, -4.0}).front(), right);
  EXPECT_EQ(both.wayTo({-4.0, 2.0}).front(), left);
}

}  // namespace
}  // namespace cordreach::geometry
