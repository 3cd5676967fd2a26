// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "tiny_site.h"

namespace cordreach::rules {
namespace {

void receptacle(TinySite& tiny, const char* key) {
  site::Outlet outlet = tiny.outlet();
  for (site::Contact& contact : outlet.contacts) contact.receptacle = key;
  tiny.put(outlet);
}

void rated(TinySite& tiny, double amperes) {
  site::Circuit circuit = tiny.circuit();
  circuit.rating = site::known(amperes * ampere);
  tiny.put(circuit);
}

TEST(ReceptacleOverRating, StartsJustAboveTheReceptacle) {
  TinySite tiny;
  receptacle(tiny, "5-15");
  tiny.given().socketPlateSum = 15.0 * ampere;
  EXPECT_FALSE(tiny.has("receptacle.over_rating"));
  tiny.given().socketPlateSum = 15.1 * ampere;
  const auto found = tiny.found("receptacle.over_rating");
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].subjects.front(), (Subject{SubjectKind::Outlet, "o1"}));
}

TEST(ReceptacleTwelveAmps, AllowsTwelveOnFifteenAndSixteenOnTwenty) {
  TinySite tiny;
  receptacle(tiny, "5-15");
  tiny.given().socketPlateSum = 12.0 * ampere;
  EXPECT_FALSE(tiny.has("receptacle.twelve_amps"));
  tiny.given().socketPlateSum = 12.1 * ampere;
  EXPECT_TRUE(tiny.has("receptacle.twelve_amps"));
  receptacle(tiny, "5-20");
  tiny.given().socketPlateSum = 16.0 * ampere;
  EXPECT_FALSE(tiny.has("receptacle.twelve_amps"));
  tiny.given().socketPlateSum = 16.1 * ampere;
  EXPECT_TRUE(tiny.has("receptacle.twelve_amps"));
}

TEST(ReceptacleTwelveAmps, DoesNotCountForAReceptacleAlone) {
  TinySite tiny;
  site::Outlet outlet = tiny.outlet();
  outlet.contacts.pop_back();
  tiny.put(outlet);
  tiny.given().socketPlateSum = 18.0 * ampere;
  EXPECT_FALSE(tiny.has("receptacle.twelve_amps"));
}

TEST(ReceptacleTwentyOnFifteen, IsFlaggedAndTheReverseIsNot) {
  TinySite tiny;
  EXPECT_FALSE(tiny.has("receptacle.twenty_on_fifteen"));
  receptacle(tiny, "5-15");
  EXPECT_FALSE(tiny.has("receptacle.twenty_on_fifteen"));
  receptacle(tiny, "5-20");
  rated(tiny, 15.0);
  EXPECT_TRUE(tiny.has("receptacle.twenty_on_fifteen"));
}

TEST(ReceptacleSingleFifteen, IsFlaggedOnlyWhenItIsAlone) {
  TinySite tiny;
  receptacle(tiny, "5-15");
  EXPECT_FALSE(tiny.has("receptacle.single_fifteen_on_twenty"));
  site::Outlet outlet = tiny.outlet();
  outlet.contacts.pop_back();
  tiny.put(outlet);
  EXPECT_TRUE(tiny.has("receptacle.single_fifteen_on_twenty"));
  receptacle(tiny, "5-20");
  EXPECT_FALSE(tiny.has("receptacle.single_fifteen_on_twenty"));
}

TEST(PlugMisfit, KnowsWhatGoesIntoWhat) {
  TinySite tiny;
  EXPECT_FALSE(tiny.has("plug.misfit"));  // 5-15 into 5-20
  site::Cord cord = tiny.cord();
  cord.make.plug = "5-20";
  tiny.put(cord);
  EXPECT_FALSE(tiny.has("plug.misfit"));
  receptacle(tiny, "5-15");
  ASSERT_TRUE(tiny.has("plug.misfit"));
  EXPECT_EQ(tiny.found("plug.misfit")[0].severity, Severity::Warning);
}

}  // namespace
}  // namespace cordreach::rules
