// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/point.h"

#include <gtest/gtest.h>

namespace cordreach::geometry {
namespace {

TEST(Distance, OfAThreeFourFiveTriangle) {
  EXPECT_DOUBLE_EQ(straightDistance({1, 1}, {4, 5}).in(units::metre), 5.0);
  EXPECT_DOUBLE_EQ(rightAngleDistance({1, 1}, {4, 5}).in(units::metre), 7.0);
}

TEST(Distance, DoesNotDependOnTheDirection) {
  EXPECT_EQ(straightDistance({-3, 2}, {8, -7}), straightDistance({8, -7}, {-3, 2}));
  EXPECT_EQ(rightAngleDistance({-3, 2}, {8, -7}), rightAngleDistance({8, -7}, {-3, 2}));
}

}  // namespace
}  // namespace cordreach::geometry
