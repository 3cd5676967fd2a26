// SPDX-License-Identifier: GPL-3.0-or-later
// Which side of its wall an outlet is on.
#include "site/outlet_side.h"

#include <gtest/gtest.h>

namespace cordreach::site {
namespace {

const std::vector<Wall> kWalls{{{0.0, 0.0}, {10.0, 0.0}}, {{0.0, 8.0}, {10.0, 8.0}}};

Outlet outletAt(double xM, double yM, const char* wall = "") {
  Outlet outlet{.id = OutletId("o"), .place = Place{FloorId("f"), {xM, yM}}};
  outlet.wall = wall;
  return outlet;
}

TEST(OutletSide, IsAwayFromTheNearestWall) {
  EXPECT_EQ(inwardOf(outletAt(5.0, 0.1), kWalls), (geometry::Point{0.0, 1.0}));
  EXPECT_EQ(inwardOf(outletAt(5.0, -0.1), kWalls), (geometry::Point{0.0, -1.0}));
  EXPECT_EQ(inwardOf(outletAt(5.0, 7.9), kWalls), (geometry::Point{0.0, -1.0}));
}

TEST(OutletSide, TheWordForItsWallCountsBeforeWhatIsDrawn) {
  EXPECT_EQ(inwardOf(outletAt(5.0, 0.1, "west"), kWalls), (geometry::Point{1.0, 0.0}));
}

TEST(OutletSide, FarFromAnyWallItHasNone) {
  EXPECT_EQ(inwardOf(outletAt(5.0, 4.0), kWalls), std::nullopt);
  EXPECT_EQ(inwardOf(outletAt(5.0, 0.61), kWalls), std::nullopt);
  EXPECT_EQ(inwardOf(outletAt(5.0, 0.1), {}), std::nullopt);
}

}  // namespace
}  // namespace cordreach::site
