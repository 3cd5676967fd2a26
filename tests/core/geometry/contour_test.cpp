// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/contour.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace cordreach::geometry {
namespace {

using units::metre;

// Holes count against it.
double areaM2(const std::vector<Outline>& outlines) {
  double twice = 0.0;
  for (const Outline& outline : outlines) {
    for (std::size_t i = 0; i < outline.size(); ++i) {
      const Point& a = outline[i];
      const Point& b = outline[(i + 1) % outline.size()];
      twice += a.xM * b.yM - b.xM * a.yM;
    }
  }
  return std::abs(twice) / 2.0;
}

TEST(Contour, OfOpenGroundIsADiscBarTheGridsDirections) {
  const WalkField field({}, Point{3.0, 4.0}, 11.0 * metre);
  const auto outlines = outlinesOf(field, 10.0 * metre);
  ASSERT_EQ(outlines.size(), 1U);
  for (const Point& point : outlines.front()) {
    const double farM = straightDistance({3.0, 4.0}, point).in(metre);
    EXPECT_LE(farM, 10.05);
    EXPECT_GE(farM, 10.0 / 1.028 - 0.05);
  }
  EXPECT_NEAR(areaM2(outlines), std::numbers::pi * 100.0, 16.0);
}

TEST(Contour, OfAShorterCordLiesWithin) {
  const WalkField field({}, Point{}, 12.0 * metre);
  EXPECT_LT(areaM2(outlinesOf(field, 4.0 * metre)), areaM2(outlinesOf(field, 5.0 * metre)));
  EXPECT_TRUE(outlinesOf(field, -1.0 * metre).empty());
}

TEST(Contour, StopsAtAWall) {
  const WalkField field({.walls = {{{2.0, -50.0}, {2.0, 50.0}}}}, Point{}, 11.0 * metre);
  for (const Outline& outline : outlinesOf(field, 10.0 * metre)) {
    for (const Point& point : outline) EXPECT_LE(point.xM, 2.0);
  }
}

// A closed room within reach all round is a hole.
TEST(Contour, LeavesOutARoomWithoutADoor) {
  const Ground ground{
      .walls = {
          {{3.0, -1.0}, {5.0, -1.0}}, {{5.0, -1.0}, {5.0, 1.0}}, {{5.0, 1.0}, {3.0, 1.0}}, {{3.0, 1.0}, {3.0, -1.0}}}};
  const WalkField field(ground, Point{}, 16.0 * metre);
  const auto outlines = outlinesOf(field, 15.0 * metre);
  EXPECT_EQ(outlines.size(), 2U);
  const WalkField open({}, Point{}, 16.0 * metre);
  EXPECT_NEAR(areaM2(outlinesOf(open, 15.0 * metre)) - areaM2(outlines), 2.25 * 2.25, 3.0);
}

}  // namespace
}  // namespace cordreach::geometry
