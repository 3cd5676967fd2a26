// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "tiny_site.h"

namespace cordreach::rules {
namespace {

TEST(ContactDead, CoversDeadAndControlledContacts) {
  TinySite tiny;
  EXPECT_FALSE(tiny.has("contact.dead"));
  site::Hookup hookup = tiny.hookup();
  hookup.hours = site::Hours{19.0 * hour, 20.0 * hour};
  tiny.put(hookup);
  site::Outlet outlet = tiny.outlet();
  outlet.contacts[0].poweredHours = site::Hours{7.0 * hour, 20.0 * hour};
  tiny.put(outlet);
  EXPECT_FALSE(tiny.has("contact.dead"));
  hookup.hours->until = 20.1 * hour;
  tiny.put(hookup);
  EXPECT_TRUE(tiny.has("contact.dead"));
  outlet.contacts[0].poweredHours.reset();
  outlet.contacts[0].dead = true;
  tiny.put(outlet);
  EXPECT_TRUE(tiny.has("contact.dead"));
}

TEST(OutletOtherFloor, ComparesOutletAndPanel) {
  TinySite tiny;
  EXPECT_FALSE(tiny.has("outlet.other_floor"));
  tiny.put(site::Floor{.id = site::FloorId("f2"), .name = "Upper"});
  site::Outlet outlet = tiny.outlet();
  outlet.place->floor = site::FloorId("f2");
  tiny.put(outlet);
  EXPECT_TRUE(tiny.has("outlet.other_floor"));
  EXPECT_EQ(tiny.verdict(), Severity::Notice);
}

TEST(DirectoryDisagrees, ReadsTheWaysPeopleWriteABreaker) {
  const auto says = [](const char* directory) {
    TinySite tiny;  // traced to 1A-4
    site::Outlet outlet = tiny.outlet();
    outlet.contacts[0].directory = directory;
    tiny.put(outlet);
    return tiny.has("directory.disagrees");
  };
  for (const char* same : {"1A-4", "1a 4", "panel 1A, breaker 04", "4", "#4", "4/6", "", "lights"}) {
    EXPECT_FALSE(says(same)) << same;
  }
  for (const char* other : {"1A-8", "1A8", "8", "breaker 14"}) EXPECT_TRUE(says(other)) << other;
}

TEST(DirectoryDisagrees, NeedsATrace) {
  TinySite tiny;
  site::Outlet outlet = tiny.outlet();
  outlet.contacts[0].directory = "1A-8";
  outlet.contacts[0].assignment->how = site::HowKnown::Assumed;
  tiny.put(outlet);
  EXPECT_FALSE(tiny.has("directory.disagrees"));
}

TEST(UnknownMatters, IsSilentWhenAllIsKnown) { EXPECT_FALSE(TinySite().has("unknown.matters")); }

TEST(UnknownMatters, SpeaksWhenABandCrossesALimitThatTheLikelyValueKeeps) {
  TinySite tiny;
  tiny.given().voltage = study::Band<units::Voltage>{110.0 * volt, 103.6 * volt, 113.0 * volt};
  EXPECT_FALSE(tiny.has("unknown.matters"));
  tiny.given().voltage = study::Band<units::Voltage>{110.0 * volt, 103.4 * volt, 113.0 * volt};
  EXPECT_TRUE(tiny.has("unknown.matters"));
}

TEST(UnknownMatters, SpeaksWhenOnlyTheWorseEndOfTheBandStalls) {
  TinySite tiny;
  tiny.given().stalledAdverse = true;
  const auto found = tiny.found("unknown.matters");
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].why.front().code, "unknown.stall");
  tiny.given().stalledWarm = true;  // then it is no longer a matter of the unknown
  EXPECT_FALSE(tiny.has("unknown.matters"));
}

TEST(UnknownMatters, SpeaksWhenOnlyTheWorseEndOfACordsHeatCrossesALimit) {
  const auto at = units::Temperature::fromCelsius;
  TinySite tiny;
  tiny.extensionGiven().conductor = study::Band<units::Temperature>{at(50.0), at(45.0), at(60.0)};
  EXPECT_FALSE(tiny.has("unknown.matters"));
  tiny.extensionGiven().conductor = study::Band<units::Temperature>{at(50.0), at(45.0), at(60.1)};
  ASSERT_TRUE(tiny.has("unknown.matters"));
  EXPECT_EQ(tiny.found("unknown.matters")[0].why.front().code, "unknown.cord_heat");
  tiny.extensionGiven().conductor = study::Band<units::Temperature>{at(60.1), at(45.0), at(70.0)};
  EXPECT_FALSE(tiny.has("unknown.matters"));  // it is too hot, known or not

  TinySite jacket;
  jacket.ownCordGiven().limit = at(90.0);
  jacket.ownCordGiven().surface = study::Band<units::Temperature>{at(50.0), at(45.0), at(60.1)};
  ASSERT_TRUE(jacket.has("unknown.matters"));
  EXPECT_EQ(jacket.found("unknown.matters")[0].why.front().code, "unknown.jacket_heat");
}

TEST(UnknownMatters, NamesAnUnknownGaugeAndAnAssumedBreaker) {
  TinySite tiny;
  site::Cord cord = tiny.cord();
  cord.make.size.reset();
  tiny.put(cord);
  EXPECT_EQ(tiny.found("unknown.matters").at(0).why.front().code, "unknown.cord_size");
  TinySite assumed;
  site::Outlet outlet = assumed.outlet();
  outlet.contacts[0].assignment->how = site::HowKnown::Assumed;
  assumed.put(outlet);
  EXPECT_EQ(assumed.found("unknown.matters").at(0).why.front().code, "unknown.assignment");
}

}  // namespace
}  // namespace cordreach::rules
