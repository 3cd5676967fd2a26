// SPDX-License-Identifier: GPL-3.0-or-later
// What the map calls free to use is what the planner would offer.
#include "planning/plug_start.h"

#include <gtest/gtest.h>

#include <functional>

#include "planning/outlet_choice.h"
#include "small_building.h"

namespace cordreach::planning {
namespace {

struct Spoilt {
  const char* how;
  std::function<void(site::Contact&)> spoil;
};

const std::vector<Spoilt> kSpoilt{
    {"dead", [](site::Contact& contact) { contact.dead = true; }},
    {"switched", [](site::Contact& contact) { contact.switched = true; }},
    {"loose", [](site::Contact& contact) { contact.loose = true; }},
    {"blocked", [](site::Contact& contact) { contact.blocked = true; }},
    {"locked", [](site::Contact& contact) { contact.lockedCover = true; }},
    {"hours",
     [](site::Contact& contact) {
       contact.poweredHours = site::Hours{6.0 * hour, 12.0 * hour};
     }},
};

// A machine that is plugged in at the first outlet, from 18 to 20 o'clock, and a second outlet beside it.
SmallBuilding building() {
  SmallBuilding building;
  building.circuit("4", 20.0);
  building.circuit("6", 20.0);
  building.outlet("1-01", "4", 0.0);
  building.outlet("1-02", "6", 3.0);
  building.machine("M2", 10.0, 14, 50.0, 2.0);
  building.plug("M2", "1-01");
  return building;
}

bool isOffered(const site::Site& site, const char* outlet) {
  const Plugging plugging = pluggingOf(*site.all<site::Hookup>().begin(), site);
  const auto choices = outletsFor(plugging, site, {{}, site::CircuitId("4"), "5-15", false});
  return std::any_of(choices.begin(), choices.end(),
                     [&](const OutletChoice& choice) { return choice.outlet->id == site::OutletId(outlet); });
}

void spoil(SmallBuilding& building, const Spoilt& how) {
  site::Outlet outlet = building.site.at<site::Outlet>(site::OutletId("1-02"));
  for (site::Contact& contact : outlet.contacts) how.spoil(contact);
  building.put(outlet);
}

TEST(PlugStart, CallsUnusableWhatThePlannerDoesNotOffer) {
  SmallBuilding sound = building();
  ASSERT_TRUE(isOffered(sound.site, "1-02"));
  const auto startOf = [](const SmallBuilding& building) {
    return bestPlugStart(building.site, "5-15", building.site.at<site::Outlet>(site::OutletId("1-02"))).first;
  };
  ASSERT_EQ(startOf(sound), PlugStart::Free);
  for (const Spoilt& how : kSpoilt) {
    SmallBuilding spoilt = building();
    spoil(spoilt, how);
    EXPECT_FALSE(isOffered(spoilt.site, "1-02")) << how.how;
    EXPECT_EQ(startOf(spoilt), PlugStart::Unusable) << how.how;
  }
}

TEST(PlugStart, PowerAtCertainHoursIsEnoughForWorkWithinThem) {
  site::Contact contact;
  contact.poweredHours = site::Hours{6.0 * hour, 22.0 * hour};
  EXPECT_TRUE(isUsable(contact, site::Hours{18.0 * hour, 22.0 * hour}));
  EXPECT_FALSE(isUsable(contact, site::Hours{18.0 * hour, 23.0 * hour}));
  EXPECT_FALSE(isUsable(contact, {}));
}

}  // namespace
}  // namespace cordreach::planning
