// SPDX-License-Identifier: GPL-3.0-or-later
// The nearest point of a wall.
#include "geometry/segment.h"

#include <gtest/gtest.h>

namespace cordreach::geometry {
namespace {

TEST(Segment, IsNearestAtItsFootOrAtAnEnd) {
  const Segment wall{{1.0, 2.0}, {5.0, 2.0}};
  EXPECT_EQ(nearestOn(wall, {3.0, 7.0}), (Point{3.0, 2.0}));
  EXPECT_EQ(nearestOn(wall, {-4.0, 0.0}), (Point{1.0, 2.0}));
  EXPECT_EQ(nearestOn(wall, {9.0, 3.0}), (Point{5.0, 2.0}));
  EXPECT_EQ(nearestOn({{1.0, 2.0}, {1.0, 2.0}}, {9.0, 3.0}), (Point{1.0, 2.0}));
}

}  // namespace
}  // namespace cordreach::geometry
