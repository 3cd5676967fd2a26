// SPDX-License-Identifier: GPL-3.0-or-later
// How far a machine gets from an outlet: lengths, walls, and outlets that it never starts from.
#include "planning/reach.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "planning/outlet_choice.h"
#include "small_building.h"

namespace cordreach::planning {
namespace {

using units::metre;

SmallBuilding corridor() {
  SmallBuilding building;
  building.circuit("4", 20.0);
  building.circuit("9", 20.0, site::UseClass::Never);
  building.circuit("11", 20.0, site::UseClass::AskFirst);
  building.outlet("1-13", "4", 10.0);
  building.outlet("1-19", "9", 40.0);
  building.outlet("1-20", "11", 60.0);
  building.machine("M2", 12.0, 14, 50.0, 14.0);
  return building;
}

ReachWish wishOf(const SmallBuilding& building) {
  return {building.site, site::FloorId("f"), site::MachineId("M2"), {}, {}};
}

double farthestXM(const std::vector<geometry::Outline>& outlines) {
  double farthest = -1e9;
  for (const auto& outline : outlines) {
    for (const geometry::Point& point : outline) farthest = std::max(farthest, point.xM);
  }
  return farthest;
}

TEST(Reach, IsTheOwnCordLessTheSlackOverOpenGround) {
  const SmallBuilding building = corridor();
  const Reach reach = reachOf(wishOf(building));
  EXPECT_EQ(reach.outlets, 1U);
  EXPECT_EQ(reach.lengths.cord(), 50.0 * foot);
  EXPECT_NEAR(farthestXM(reach.withSlack), 10.0 + (50.0 * foot - kSlack).in(metre), 0.1);
  EXPECT_NEAR(farthestXM(reach.stretched), 10.0 + (50.0 * foot).in(metre), 0.1);
}

TEST(Reach, AnExtensionAddsItsLength) {
  const SmallBuilding building = corridor();
  ReachWish wish = wishOf(building);
  wish.extension = SmallBuilding::make(12, 25.0);
  EXPECT_NEAR(farthestXM(reachOf(wish).withSlack), 10.0 + (75.0 * foot - kSlack).in(metre), 0.1);
}

TEST(Reach, GoesRoundAWall) {
  SmallBuilding building = corridor();
  site::Floor floor = building.site.at<site::Floor>(site::FloorId("f"));
  floor.walls = {{{15.0, -40.0}, {15.0, 40.0}}};
  building.put(floor);
  EXPECT_LE(farthestXM(reachOf(wishOf(building)).stretched), 15.0);
}

// An outlet stands close to its wall, in a cell that the wall passes through.
TEST(Reach, OfAnOutletStaysOnItsSideOfItsWall) {
  SmallBuilding building = corridor();
  site::Floor floor = building.site.at<site::Floor>(site::FloorId("f"));
  floor.walls = {{{-60.0, -0.1}, {80.0, -0.1}}};
  building.put(floor);
  const auto outlines = reachOf(wishOf(building)).stretched;
  ASSERT_FALSE(outlines.empty());
  for (const geometry::Point& point : outlines.front()) EXPECT_GE(point.yM, -0.1);
}

TEST(Reach, KeepsToTheCorridorLinesWhereThereAreAny) {
  SmallBuilding building = corridor();
  site::Floor floor = building.site.at<site::Floor>(site::FloorId("f"));
  floor.corridorLines = {{{{0.0, 0.0}, {60.0, 0.0}}}};
  building.put(floor);
  for (const auto& outline : reachOf(wishOf(building)).stretched) {
    for (const geometry::Point& point : outline) EXPECT_LE(std::abs(point.yM), 3.3);
  }
}

TEST(Reach, NeverStartsFromACircuitThatIsOffLimitsAndFromAskFirstOnlyWhenThatOutletIsMeant) {
  const SmallBuilding building = corridor();
  ReachWish wish = wishOf(building);
  wish.outlet = site::OutletId("1-19");
  EXPECT_EQ(reachStartOf(wish, building.site.at<site::Outlet>(*wish.outlet)), PlugStart::Never);
  EXPECT_EQ(reachOf(wish).outlets, 0U);
  EXPECT_TRUE(reachOf(wish).stretched.empty());
  wish.outlet = site::OutletId("1-20");
  EXPECT_EQ(reachStartOf(wish, building.site.at<site::Outlet>(*wish.outlet)), PlugStart::AskFirst);
  EXPECT_EQ(reachOf(wish).outlets, 1U);
}

TEST(Reach, SaysWhatItDoesNotKnowOfTheFloor) {
  SmallBuilding building = corridor();
  Reach reach = reachOf(wishOf(building));
  EXPECT_FALSE(reach.isDrawn);
  EXPECT_EQ(reach.unknownBreakers, 0U);
  site::Outlet outlet = building.site.at<site::Outlet>(site::OutletId("1-13"));
  for (site::Contact& contact : outlet.contacts) contact.assignment.reset();
  building.put(outlet);
  site::Floor floor = building.site.at<site::Floor>(site::FloorId("f"));
  floor.walls = {{{15.0, -40.0}, {15.0, 40.0}}};
  building.put(floor);
  reach = reachOf(wishOf(building));
  EXPECT_TRUE(reach.isDrawn);
  EXPECT_EQ(reach.unknownBreakers, 1U);
}

TEST(Reach, APlugThatDoesNotFitStartsNowhere) {
  const SmallBuilding building = corridor();
  ReachWish wish = wishOf(building);
  wish.extension = SmallBuilding::make(10, 50.0);
  wish.extension->plug = "L5-30";
  EXPECT_EQ(reachStartOf(wish, building.site.at<site::Outlet>(site::OutletId("1-13"))), PlugStart::DoesNotFit);
  EXPECT_EQ(reachOf(wish).outlets, 0U);
}

TEST(Reach, CountsTheLowEndOfWhatIsGuessedAndSaysSo) {
  SmallBuilding building = corridor();
  EXPECT_FALSE(reachLengthsOf(wishOf(building)).guessed);
  site::Machine machine = building.site.at<site::Machine>(site::MachineId("M2"));
  auto& length = *machine.inlets.front().cord.length;
  length.low = 40.0 * foot;
  length.high = 60.0 * foot;
  building.put(machine);
  const ReachLengths lengths = reachLengthsOf(wishOf(building));
  EXPECT_TRUE(lengths.guessed);
  EXPECT_EQ(lengths.own, 40.0 * foot);
}

TEST(Reach, SaysWhenAnExtensionIsLighterThanTheMachinesOwnCord) {
  const SmallBuilding building = corridor();
  ReachWish wish = wishOf(building);
  wish.extension = SmallBuilding::make(14, 50.0);
  EXPECT_FALSE(reachLengthsOf(wish).lighter);
  wish.extension = SmallBuilding::make(16, 50.0);
  EXPECT_TRUE(reachLengthsOf(wish).lighter);
}

TEST(Reach, ACordShorterThanTheSlackGetsNowhere) {
  SmallBuilding building = corridor();
  site::Machine machine = building.site.at<site::Machine>(site::MachineId("M2"));
  machine.inlets.front().cord.length = site::known(6.0 * foot);
  building.put(machine);
  const Reach reach = reachOf(wishOf(building));
  EXPECT_EQ(reach.lengths.along(), units::Length{});
  EXPECT_LE(farthestXM(reach.withSlack), 10.3);
}

}  // namespace
}  // namespace cordreach::planning
