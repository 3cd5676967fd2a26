// SPDX-License-Identifier: GPL-3.0-or-later
// Where pixels of a plan lie on the floor, whatever is done with the plan.
#include "survey/picture_edits.h"

#include <gtest/gtest.h>

#include <cmath>

#include "panels/new_things.h"

namespace cordreach::app {
namespace {

using geometry::Point;

class PictureEdits : public ::testing::Test {
 protected:
  PictureEdits() {
    site::Picture picture{"0123456789abcdef", "png", 0.02, {3, 4}};
    picture.dim = 0.5;
    take(placePicture(site, floor(), picture));
  }
  [[nodiscard]] site::FloorId floor() const { return site.all<site::Floor>().begin()->id; }
  [[nodiscard]] const site::Picture& picture() const { return *site.at<site::Floor>(floor()).picture; }
  void take(const PictureEdit& edit) {
    ASSERT_TRUE(edit) << edit.error().code;
    const site::Site before = site;
    ASSERT_TRUE(site::apply(edit.value(), site));
    site::Site back = site;
    ASSERT_TRUE(site::apply(site::inverseOf(edit.value()), back));
    EXPECT_EQ(back, before) << "it does not undo";
  }
  void liesAt(const Point& pixel, const Point& wanted) const {
    const Point at = onFloor(picture(), pixel);
    EXPECT_NEAR(at.xM, wanted.xM, 1e-9);
    EXPECT_NEAR(at.yM, wanted.yM, 1e-9);
  }

  site::Site site = newSite({"Elm House", "Supply", "Floor 1"});
};

TEST_F(PictureEdits, ScaleComesFromTwoPointsAndTheirDistance) {
  const Point stays = onFloor(picture(), {100, 200});
  take(scalePicture(site, floor(), {100, 200}, {400, 600}, 25.0 * units::metre));
  EXPECT_NEAR(picture().metresPerPixel, 0.05, 1e-12);
  liesAt({100, 200}, stays);
  liesAt({400, 600}, {stays.xM + 15, stays.yM + 20});
}

TEST_F(PictureEdits, RefusesAScaleThatSaysNothing) {
  EXPECT_EQ(scalePicture(site, floor(), {5, 5}, {5, 6}, 2.0 * units::metre).error().code, "picture.points_meet");
  EXPECT_EQ(scalePicture(site, floor(), {5, 5}, {50, 60}, 0.0 * units::metre).error().code, "picture.bad_distance");
  take(removePicture(site, floor()));
  EXPECT_EQ(scalePicture(site, floor(), {5, 5}, {50, 60}, 2.0 * units::metre).error().code, "picture.none");
}

TEST_F(PictureEdits, TurnsRoundThePointThatItIsGiven) {
  const Point middle = onFloor(picture(), {500, 250});
  take(turnPicture(site, floor(), 90, {500, 250}));
  liesAt({500, 250}, middle);
  liesAt({600, 250}, {middle.xM, middle.yM + 2});  // what lay to the right lies below
  take(turnPicture(site, floor(), 300, {500, 250}));
  EXPECT_NEAR(picture().turnDegrees, 30, 1e-9);
}

TEST_F(PictureEdits, TheSameSheetInOtherPixelsKeepsItsEdges) {
  take(turnPicture(site, floor(), 17, {0, 0}));
  const Point corner = onFloor(picture(), {1000, 600});
  take(replaceSameSheet(site, floor(), {"fedcba9876543210", "jpg"}, 1000, 2500));
  EXPECT_EQ(picture().suffix, "jpg");
  EXPECT_EQ(picture().dim, 0.5);
  liesAt({2500, 1500}, corner);
}

// Shifted, turned and drawn larger: both points come to lie where they lay.
TEST_F(PictureEdits, ANewerIssueIsLaidOnByTwoPoints) {
  const PointPair older{{120, 80}, {820, 380}};
  const PointPair newer{{900, 300}, {140, 1500}};
  const Point first = onFloor(picture(), older.first);
  const Point second = onFloor(picture(), older.second);
  take(replaceByPoints(site, floor(), {"fedcba9876543210", "png"}, older, newer));
  liesAt(newer.first, first);
  liesAt(newer.second, second);
  const PointPair same{{1, 1}, {1, 1}};
  EXPECT_EQ(replaceByPoints(site, floor(), {"fedcba9876543210", "png"}, older, same).error().code,
            "picture.points_meet");
}

TEST_F(PictureEdits, ASquaredPhotoKeepsItsUpperEdge) {
  const PointPair older{{50, 60}, {950, 110}};
  const Point left = onFloor(picture(), older.first);
  const Point right = onFloor(picture(), older.second);
  take(replaceSquared(site, floor(), {"fedcba9876543210", "png"}, older, {{0, 0}, {900, 0}}));
  liesAt({0, 0}, left);
  liesAt({900, 0}, right);
}

}  // namespace
}  // namespace cordreach::app
