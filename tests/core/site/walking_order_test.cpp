// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/walking_order.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "site/natural_order.h"

namespace cordreach::site {
namespace {

// A floor with a corridor along which doors lead to two rooms; the panel is at its left end.
class WalkingOrder : public ::testing::Test {
 protected:
  WalkingOrder() {
    site.all<Floor>().put({.id = FloorId("up"), .name = "Upstairs", .level = 1});
    site.all<Floor>().put({.id = FloorId("z"), .name = "Ground", .level = 0});
    site.all<Supply>().put({.id = SupplyId("S")});
    Panel panel{.id = PanelId("P"), .name = "P", .supply = SupplyId("S")};
    panel.place = Place{FloorId("z"), {0, 0}};
    site.all<Panel>().put(panel);
    site.all<Room>().put({.id = RoomId("R1"), .floor = FloorId("z"), .name = "Hall", .corridor = true});
  }

  void outlet(const std::string& id, double x, double y, const std::string& room, const std::string& floor = "z") {
    Outlet one{.id = OutletId(id), .label = id, .place = Place{FloorId(floor), {x, y}}};
    one.room = room;
    site.all<Outlet>().put(one);
  }

  [[nodiscard]] std::string walk() const {
    std::string text;
    for (const OutletId& id : walkingOrder(site)) text += id.text() + " ";
    return text;
  }

  Site site{SiteId("s")};
};

TEST_F(WalkingOrder, FinishesARoomBeforeItIsLeft) {
  outlet("1", 1, 0, "101");
  outlet("2", 9, 0, "101");  // at the far end of the room
  outlet("3", 2, 0, "102");  // next door, nearer to 1
  EXPECT_EQ(walk(), "1 2 3 ");
}

TEST_F(WalkingOrder, LeavesACorridorForWhateverIsNearest) {
  outlet("1", 1, 0, "Hall");
  outlet("2", 9, 0, "Hall");
  outlet("3", 2, 0, "102");
  EXPECT_EQ(walk(), "1 3 2 ");
}

TEST_F(WalkingOrder, BeginsAtThePanelAndGoesUpTheFloors) {
  outlet("1", 8, 0, "");
  outlet("2", 1, 0, "");
  outlet("0", 0, 0, "", "up");
  EXPECT_EQ(walk(), "2 1 0 ");
}

TEST_F(WalkingOrder, WithoutAPanelBeginsAtTheLowestNumber) {
  outlet("1-10", 0, 0, "", "up");
  outlet("1-9", 8, 0, "", "up");
  EXPECT_EQ(walk(), "1-9 1-10 ");
}

TEST_F(WalkingOrder, PutsWhatHasNoPlaceLastByRoomAndNumber) {
  for (const auto& [id, room] : {std::pair{"7", "b"}, {"8", "a"}, {"10", "b"}}) {
    Outlet one{.id = OutletId(id), .label = id};
    one.room = room;
    site.all<Outlet>().put(one);
  }
  outlet("99", 4, 4, "c");
  EXPECT_EQ(walk(), "99 8 7 10 ");
}

TEST_F(WalkingOrder, NamesEachOutletOnce) {
  for (int i = 0; i < 200; ++i)
    outlet(std::to_string(i), i * 37 % 50, i * 53 % 40, i % 3 == 0 ? "Hall" : "r" + std::to_string(i % 7));
  auto order = walkingOrder(site);
  EXPECT_EQ(order.size(), 200U);
  std::sort(order.begin(), order.end());
  EXPECT_EQ(std::unique(order.begin(), order.end()), order.end());
}

TEST(NaturalOrder, ReadsRunsOfDigitsAsNumbers) {
  EXPECT_TRUE(comesBefore("1-5", "1-13"));
  EXPECT_FALSE(comesBefore("1-13", "1-5"));
  EXPECT_TRUE(comesBefore("1-05", "1-13"));
  EXPECT_FALSE(comesBefore("1-05", "1-5"));
  EXPECT_FALSE(comesBefore("1-5", "1-05"));
  EXPECT_TRUE(comesBefore("", "0"));
  EXPECT_TRUE(comesBefore("1A-5", "1A-5b"));
  EXPECT_TRUE(comesBefore("99999999999999999998", "99999999999999999999"));
}

}  // namespace
}  // namespace cordreach::site
