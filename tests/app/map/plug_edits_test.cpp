// SPDX-License-Identifier: GPL-3.0-or-later
// Deeds with plugs, cords and switches on the demo building.
#include "map/plug_edits.h"

#include <gtest/gtest.h>

#include "app/map/support.h"

namespace cordreach::app {
namespace {

using site::CordId;
using site::ExtensionUseId;
using site::HookupId;
using site::MachineId;
using site::OutletId;

const HeldPlug kSlowBurnisher = MachinePlug{MachineId("M2"), "A", HookupId("H05")};
const site::OutletSocket kColumn{OutletId("1-31"), "upper"};

site::Site afterEdit(site::Site site, const EditResult& edit) {
  EXPECT_TRUE(edit) << (edit ? "" : edit.error().code);
  if (edit) {
    EXPECT_TRUE(site::apply(edit.value(), site));
  }
  return site;
}

TEST(PlugEdits, MovingAPlugPutsTheFreedExtensionAway) {
  const site::Site before = test::demoSite();
  const EditResult edit = plugInto(before, kSlowBurnisher, kColumn);
  const site::Site after = afterEdit(before, edit);
  EXPECT_EQ(edit.value().code, "hookup.move");
  EXPECT_EQ(after.at<site::Hookup>(HookupId("H05")).socket, site::Socket{kColumn});
  EXPECT_EQ(after.find<site::ExtensionUse>(ExtensionUseId("E05")), nullptr);
}

TEST(PlugEdits, TheSameMoveTwiceIsTheSameEdit) {
  const site::Site site = test::demoSite();
  const HeldPlug idle = MachinePlug{MachineId("M5"), "A", {}};
  EXPECT_EQ(plugInto(site, kSlowBurnisher, kColumn).value(), plugInto(site, kSlowBurnisher, kColumn).value());
  const site::OutletSocket free{OutletId("1-21"), "upper"};
  const EditResult refused = plugInto(site, idle, free);  // its plug is in a socket from six on
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().code, "site.plug_in_two_sockets");
}

TEST(PlugEdits, ATakenSocketIsRefused) {
  const EditResult edit = plugInto(test::demoSite(), kSlowBurnisher, {OutletId("1-30"), "upper"});
  ASSERT_FALSE(edit);
  EXPECT_EQ(edit.error().code, "site.socket_taken_twice");
}

TEST(PlugEdits, AnExtensionsPlugMovesWithAllThatHangsOnIt) {
  const site::Site before = test::demoSite();
  const site::Site after = afterEdit(before, plugInto(before, ExtensionPlug{ExtensionUseId("E05")}, kColumn));
  EXPECT_EQ(after.at<site::ExtensionUse>(ExtensionUseId("E05")).socket, site::Socket{kColumn});
  EXPECT_EQ(after.at<site::Hookup>(HookupId("H05")), before.at<site::Hookup>(HookupId("H05")));
}

TEST(PlugEdits, ACordOfTheCartTakesTheOthersPlace) {
  const site::Site before = test::demoSite();
  const site::Site after = afterEdit(before, putCordBetween(before, HookupId("H05"), CordId("C01")));
  EXPECT_EQ(after.find<site::ExtensionUse>(ExtensionUseId("E05")), nullptr);
  const auto& socket = after.at<site::Hookup>(HookupId("H05")).socket;
  EXPECT_EQ(socket, (site::Socket{site::CordSocket{CordId("C01"), 0}}));
  bool found = false;
  for (const site::ExtensionUse& use : after.all<site::ExtensionUse>()) {
    if (use.cord != CordId("C01")) continue;
    found = true;
    EXPECT_EQ(use.socket, (site::Socket{site::OutletSocket{OutletId("1-13"), "upper"}}));
    EXPECT_EQ(use.hours, after.at<site::Hookup>(HookupId("H05")).hours);
  }
  EXPECT_TRUE(found);
}

TEST(PlugEdits, TakingTheCordOutPutsThePlugInTheSameContact) {
  const site::Site before = test::demoSite();
  const site::Site after = afterEdit(before, putCordBetween(before, HookupId("H05"), std::nullopt));
  EXPECT_EQ(after.at<site::Hookup>(HookupId("H05")).socket,
            (site::Socket{site::OutletSocket{OutletId("1-13"), "upper"}}));
  EXPECT_EQ(after.find<site::ExtensionUse>(ExtensionUseId("E05")), nullptr);
}

TEST(PlugEdits, UnpluggingAndEveryOtherDeedCanBeTakenBack) {
  const site::Site before = test::demoSite();
  const site::LayingOfCord coiled{tables::Laying::Coiled, 12, {}};
  const EditResult edits[] = {unplug(before, HookupId("H05")),
                              layExtension(before, ExtensionUseId("E05"), coiled),
                              layOwnCord(before, HookupId("H05"), coiled),
                              switchMachine(before, HookupId("H05"), true),
                              switchLoad(before, site::FixedLoadId("L02"), true),
                              changePad(before, HookupId("H05"), site::PadId("P3"))};
  for (const EditResult& edit : edits) {
    site::Site site = afterEdit(before, edit);
    EXPECT_NE(site, before) << edit.value().code;
    ASSERT_TRUE(site::apply(site::inverseOf(edit.value()), site));
    EXPECT_EQ(site, before) << edit.value().code;
  }
}

TEST(PlugEdits, EventsGoWithTheirPlugAndItsCord) {
  site::Site site = test::demoSite();
  site.all<site::Event>().put({.id = site::EventId("V1"), .kind = site::EventKind::Stop, .hookup = HookupId("H05")});
  site.all<site::Event>().put(
      {.id = site::EventId("V2"), .kind = site::EventKind::Lay, .extension = ExtensionUseId("E05")});
  site.all<site::Event>().put({.id = site::EventId("V3"), .kind = site::EventKind::Stop, .hookup = HookupId("H01")});
  const site::Site after = afterEdit(site, unplug(site, HookupId("H05")));
  EXPECT_EQ(after.find<site::Event>(site::EventId("V1")), nullptr);
  EXPECT_EQ(after.find<site::Event>(site::EventId("V2")), nullptr);
  EXPECT_NE(after.find<site::Event>(site::EventId("V3")), nullptr);
}

TEST(PlugEdits, WhatIsGoneIsSaidToBeGone) {
  const EditResult edit = switchMachine(test::demoSite(), HookupId("H99"), true);
  ASSERT_FALSE(edit);
  EXPECT_EQ(edit.error().code, "plug.no_longer_there");
}

}  // namespace
}  // namespace cordreach::app
