// SPDX-License-Identifier: GPL-3.0-or-later
// What is on a breaker, and what goes dark with it.
#include "site/feeding.h"

#include <gtest/gtest.h>

namespace cordreach::site {
namespace {

Circuit circuit(const char* id, const char* panel, const char* number) {
  return {.id = CircuitId(id), .panel = PanelId(panel), .number = number, .phases = {0}};
}

Contact contact(const char* name, const char* on, HowKnown how = HowKnown::Traced) {
  Contact made;
  made.name = name;
  if (on != nullptr) made.assignment = Assignment{CircuitId(on), how, {}, {}};
  return made;
}

Site building() {
  Site site{.id = SiteId("s")};
  site.all<Panel>().put({.id = PanelId("main"), .name = "Main"});
  site.all<Panel>().put({.id = PanelId("sub"), .name = "Sub", .fedFrom = PanelId("main")});
  Circuit one = circuit("c1", "main", "1");
  one.tied = true;
  one.sharesNeutralWith = {CircuitId("c3")};
  site.all<Circuit>().put(one);
  site.all<Circuit>().put(circuit("c3", "main", "3"));
  site.all<Circuit>().put(circuit("c10", "main", "10"));
  site.all<Circuit>().put(circuit("s2", "sub", "2"));
  Outlet near{.id = OutletId("a"), .label = "1-01"};
  near.contacts = {contact("upper", "c1"), contact("lower", "c3")};
  Outlet far{.id = OutletId("b"), .label = "1-02"};
  far.contacts = {contact("upper", "c1", HowKnown::Directory), contact("lower", "c1")};
  Outlet unknown{.id = OutletId("u"), .label = "1-03"};
  unknown.contacts = {contact("upper", nullptr), contact("lower", "c10")};
  for (const Outlet& outlet : {near, far, unknown}) site.all<Outlet>().put(outlet);
  site.all<FixedLoad>().put({.id = FixedLoadId("l"), .name = "Fan", .circuit = CircuitId("c1")});
  Machine machine{.id = MachineId("m"), .name = "Burnisher"};
  machine.inlets.push_back({.name = "A"});
  site.all<Machine>().put(machine);
  Cord cord{.id = CordId("x"), .label = "C1"};
  cord.sockets = {"5-15"};
  site.all<Cord>().put(cord);
  site.all<ExtensionUse>().put(
      {.id = ExtensionUseId("u"), .cord = cord.id, .socket = OutletSocket{OutletId("b"), "upper"}});
  site.all<Hookup>().put({.id = HookupId("h"), .machine = machine.id, .inlet = "A", .socket = CordSocket{cord.id, 0}});
  return site;
}

TEST(Feeding, ListsOutletsLoadsAndMachinesThroughTheirCords) {
  const Feeding fed = feedingOf(building(), CircuitId("c1"));
  ASSERT_EQ(fed.outlets.size(), 2U);
  EXPECT_EQ(fed.outlets[0].contacts, std::vector<std::string>{"upper"});
  EXPECT_EQ(fed.outlets[0].how, HowKnown::Traced);
  EXPECT_EQ(fed.outlets[1].contacts.size(), 2U);
  EXPECT_EQ(fed.outlets[1].how, HowKnown::Directory);
  EXPECT_EQ(fed.loads, std::vector<FixedLoadId>{FixedLoadId("l")});
  EXPECT_EQ(fed.machines, std::vector<MachineId>{MachineId("m")});
  EXPECT_TRUE(feedingOf(building(), CircuitId("c3")).machines.empty());
}

TEST(Feeding, TiedHandlesMoveTogether) {
  EXPECT_EQ(switchedWith(building(), CircuitId("c1")), (std::vector<CircuitId>{CircuitId("c1"), CircuitId("c3")}));
  EXPECT_EQ(switchedWith(building(), CircuitId("c10")), std::vector<CircuitId>{CircuitId("c10")});
}

TEST(Feeding, APanelTakesThePanelsBehindItAlong) {
  EXPECT_EQ(circuitsBehind(building(), PanelId("main")),
            (std::vector<CircuitId>{CircuitId("c1"), CircuitId("c3"), CircuitId("c10"), CircuitId("s2")}));
  EXPECT_EQ(circuitsBehind(building(), PanelId("sub")), std::vector<CircuitId>{CircuitId("s2")});
}

TEST(Feeding, WhatNobodyKnowsIsCounted) { EXPECT_EQ(contactsWithoutBreaker(building()), 1U); }

}  // namespace
}  // namespace cordreach::site
