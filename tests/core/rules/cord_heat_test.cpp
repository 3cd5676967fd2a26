// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>

#include "tiny_site.h"

namespace cordreach::rules {
namespace {

units::Temperature at(double celsius) { return units::Temperature::fromCelsius(celsius); }

TEST(HeatBeyondModel, IsDangerAndNamesTheCoil) {
  TinySite tiny;
  EXPECT_FALSE(tiny.has("heat.beyond_model"));
  site::ExtensionUse use = tiny.use();
  use.laying = {tables::Laying::Coiled, 12.0, {}};
  tiny.put(use);
  tiny.extensionGiven().conductor.reset();
  tiny.extensionGiven().surface.reset();
  const auto found = tiny.found("heat.beyond_model");
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].why.front().code, "laying.coiled");
}

TEST(CordConductorOverRating, StartsJustAboveTheRating) {
  TinySite tiny;
  tiny.extensionGiven().conductor = sharp(at(60.0));
  EXPECT_FALSE(tiny.has("cord.conductor_over_rating"));
  tiny.extensionGiven().conductor = sharp(at(60.1));
  ASSERT_TRUE(tiny.has("cord.conductor_over_rating"));
  EXPECT_EQ(tiny.found("cord.conductor_over_rating")[0].why.front().code, "cord.carries");
  tiny.extensionGiven().limit = at(90.0);
  EXPECT_FALSE(tiny.has("cord.conductor_over_rating"));
}

TEST(CordConductorOverRating, NamesTheReadingItRestsOn) {
  TinySite tiny;
  tiny.extensionGiven().conductor = sharp(at(60.1));
  site::Cord cord = tiny.cord();
  site::JacketReading reading;
  reading.surface = at(48.0);
  reading.current = 13.0 * units::ampere;
  cord.make.jacketReading = reading;
  tiny.put(cord);
  const auto why = tiny.found("cord.conductor_over_rating").at(0).why;
  EXPECT_TRUE(std::any_of(why.begin(), why.end(), [](const Reason& reason) { return reason.code == "cord.measured"; }));
}

TEST(CordConductorOverRating, GoesByTheLikelyValueNotTheBand) {
  TinySite tiny;
  tiny.extensionGiven().conductor = study::Band<units::Temperature>{at(55.0), at(45.0), at(66.0)};
  EXPECT_FALSE(tiny.has("cord.conductor_over_rating"));
}

TEST(CordConductorOverRating, NamesTheCoilFirst) {
  TinySite tiny;
  site::ExtensionUse use = tiny.use();
  use.laying = {tables::Laying::Coiled, 12.0, {}};
  tiny.put(use);
  tiny.extensionGiven().conductor = sharp(at(101.0));
  const auto all = tiny.judged();
  ASSERT_FALSE(all.empty());
  EXPECT_EQ(all.front().code, "cord.conductor_over_rating");
  EXPECT_EQ(all.front().why.front().code, "laying.coiled");
}

TEST(CordJacketOver60, StartsJustAbove60) {
  TinySite tiny;
  tiny.ownCordGiven().surface = sharp(at(60.0));
  EXPECT_FALSE(tiny.has("cord.jacket_over_60"));
  tiny.ownCordGiven().surface = sharp(at(60.1));
  EXPECT_TRUE(tiny.has("cord.jacket_over_60"));
}

TEST(PlugOverRise, StartsJustAbove30Kelvin) {
  TinySite tiny;
  tiny.extensionGiven().plugRise = sharp(30.0 * kelvin);
  EXPECT_FALSE(tiny.has("plug.over_rise"));
  tiny.extensionGiven().plugRise = sharp(30.1 * kelvin);
  EXPECT_TRUE(tiny.has("plug.over_rise"));
}

}  // namespace
}  // namespace cordreach::rules
