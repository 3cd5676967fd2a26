// SPDX-License-Identifier: GPL-3.0-or-later
// What is hottest, and the watts behind it.
#include "rules/hot_places.h"

#include <gtest/gtest.h>

#include "physics/wire.h"
#include "tiny_site.h"

namespace cordreach::rules {
namespace {

units::Temperature degrees(double celsius) { return units::Temperature::fromCelsius(celsius); }

const HotPlace* placeOf(const std::vector<HotPlace>& places, HotKind kind) {
  for (const HotPlace& place : places) {
    if (place.kind == kind) return &place;
  }
  return nullptr;
}

TEST(HotPlaces, AreSortedByTheirTemperature) {
  TinySite tiny;
  tiny.extensionGiven().conductor = sharp(degrees(71.0));
  tiny.ownCordGiven().conductor = sharp(degrees(48.0));
  tiny.circuitGiven().wireTemperature = degrees(55.0);
  const auto places = hotPlaces(tiny.site, tiny.answer);
  ASSERT_GE(places.size(), 5U);  // two cords, two plugs, the wall
  EXPECT_EQ(places.front().kind, HotKind::Extension);
  EXPECT_EQ(places.front().subject, (Subject{SubjectKind::Cord, "x1"}));
  for (std::size_t i = 1; i < places.size(); ++i) EXPECT_GE(places[i - 1].temperature, places[i].temperature);
}

TEST(HotPlaces, WhatIsBeyondTheModelComesFirstAndHasNoFigure) {
  TinySite tiny;
  tiny.ownCordGiven().conductor.reset();
  const auto places = hotPlaces(tiny.site, tiny.answer);
  EXPECT_EQ(places.front().kind, HotKind::OwnCord);
  EXPECT_FALSE(places.front().temperature);
  EXPECT_FALSE(places.front().lost);
}

// 50 ft of 12 AWG both ways at 40 °C, by its ohms a metre.
TEST(HotPlaces, ACordLosesItsOhmsTimesAmpsSquared) {
  TinySite tiny;
  tiny.extensionGiven().conductor = sharp(degrees(40.0));
  tiny.extensionGiven().current = sharp(15.0 * ampere);
  const HotPlace* cord = nullptr;
  const auto places = hotPlaces(tiny.site, tiny.answer);
  cord = placeOf(places, HotKind::Extension);
  ASSERT_NE(cord, nullptr);
  const auto ohms = physics::cordResistance(units::WireSize::awg(12), degrees(40.0)) * (100.0 * foot);
  EXPECT_NEAR(cord->lost->in(units::watt), 225.0 * ohms.in(units::ohm), 1e-9);
  EXPECT_GT(cord->lost->in(units::watt), 30.0);
  EXPECT_LT(cord->lost->in(units::watt), 45.0);
}

TEST(HotPlaces, APlugIsAtTheSocketItIsIn) {
  TinySite tiny;
  tiny.extensionGiven().plugRise = sharp(33.0 * kelvin);
  const auto places = hotPlaces(tiny.site, tiny.answer);
  const HotPlace* plug = placeOf(places, HotKind::Plug);
  ASSERT_NE(plug, nullptr);
  EXPECT_EQ(plug->outlet, site::OutletId("o1"));
  EXPECT_NEAR(plug->temperature->celsius(), 25.0 + 33.0, 1e-9);
  EXPECT_NEAR(plug->limit.celsius(), 25.0 + 30.0, 1e-9);
}

TEST(HotPlaces, TheWallLosesTheMachinesAmpsTimesTheVoltsLostInIt) {
  TinySite tiny;
  tiny.given().branchDrop = 3.0 * volt;
  tiny.circuitGiven().shares = {{site::HookupId("h1"), {}, 14.0 * ampere, 15.0 * ampere, false, false}};
  tiny.addLoad("l1", "Vending machine", 4.0);
  const auto places = hotPlaces(tiny.site, tiny.answer);
  const HotPlace* wall = placeOf(places, HotKind::WallWire);
  ASSERT_NE(wall, nullptr);
  EXPECT_NEAR(wall->lost->in(units::watt), 42.0, 1e-9);
  EXPECT_TRUE(wall->lacksLoads) << "the machine's part only, and that is said";
  EXPECT_EQ(wall->limit, degrees(60.0));
  EXPECT_TRUE(wall->limitGuessed);
}

TEST(HotPlaces, AWallThatMachinesAloneLoadLacksNothing) {
  TinySite tiny;
  tiny.circuitGiven().shares = {{site::HookupId("h1"), {}, 14.0 * ampere, 15.0 * ampere, false, false}};
  for (const HotPlace& place : hotPlaces(tiny.site, tiny.answer)) EXPECT_FALSE(place.lacksLoads);
}

TEST(HotPlaces, WhatCarriesNothingIsLeftOut) {
  TinySite tiny;
  for (study::CordAnswer& cord : tiny.given().cords) cord.current = sharp(0.0 * ampere);
  tiny.circuitGiven().current = sharp(0.0 * ampere);
  EXPECT_TRUE(hotPlaces(tiny.site, tiny.answer).empty());
}

}  // namespace
}  // namespace cordreach::rules
