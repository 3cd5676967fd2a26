// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/reach_area.h"

#include <gtest/gtest.h>

#include <cmath>

namespace cordreach::app {
namespace {

// A ring of that many corners round a point.
geometry::Outline ring(double radiusM, int corners) {
  geometry::Outline outline;
  for (int i = 0; i < corners; ++i) {
    const double angle = 2 * std::acos(-1.0) * i / corners;
    outline.push_back({20 + radiusM * std::cos(angle), 10 + radiusM * std::sin(angle)});
  }
  return outline;
}

planning::Reach reachOf(int corners) {
  planning::Reach reach;
  reach.withSlack = {ring(4, corners)};
  reach.stretched = {ring(8, corners)};
  return reach;
}

int alphaAt(const QPixmap& pixmap, const ReachArea& area, QPointF metres) {
  const QPointF share = metres - area.shadeFrame.topLeft();
  return qAlpha(pixmap.toImage().pixel(static_cast<int>(share.x() / area.shadeFrame.width() * pixmap.width()),
                                       static_cast<int>(share.y() / area.shadeFrame.height() * pixmap.height())));
}

TEST(ReachAreaTest, FewCornersStaySharp) {
  const ReachArea area = areaOf(reachOf(100));
  EXPECT_TRUE(area.shade.isNull());
  EXPECT_FALSE(area.stretched.isEmpty());
  EXPECT_TRUE(shadeIn(Qt::red, area).isNull());
}

TEST(ReachAreaTest, ManyCornersBecomeAShadeInTheSamePlace) {
  const ReachArea area = areaOf(reachOf(10000));
  ASSERT_FALSE(area.shade.isNull());
  EXPECT_FALSE(area.isEmpty());
  const QPixmap red = shadeIn(Qt::red, area);
  const int near = alphaAt(red, area, {20, 10});
  const int tight = alphaAt(red, area, {20, 16});
  EXPECT_GT(near, tight);  // both areas lie over each other
  EXPECT_GT(tight, 0);
  EXPECT_EQ(alphaAt(red, area, {12.2, 2.2}), 0);
  EXPECT_EQ(red.toImage().pixelColor(red.rect().center()).red(), 255);
}

TEST(ReachAreaTest, OfNothingIsNothing) { EXPECT_TRUE(areaOf({}).isEmpty()); }

}  // namespace
}  // namespace cordreach::app
