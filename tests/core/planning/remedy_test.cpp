// SPDX-License-Identifier: GPL-3.0-or-later
// What is offered, what never is, and that an offer does what it says.
#include "planning/remedy.h"

#include <gtest/gtest.h>

#include "small_building.h"

namespace cordreach::planning {
namespace {

// A 14.5 A machine through a 16 AWG extension: over the cord's rating; a better outlet is within its own cord's reach.
SmallBuilding thinCord() {
  SmallBuilding building;
  building.circuit("4", 20.0);
  building.circuit("14", 20.0);
  building.outlet("1-13", "4", 10.0);
  building.outlet("1-31", "14", 16.0);
  building.machine("M2", 14.5, 14, 50.0, 14.0);
  building.cord("C08", 16, 50.0);
  building.plug("M2", "1-13", "C08");
  return building;
}

TEST(Remedies, OfferANearerOutletWithoutAnExtensionFirst) {
  const SmallBuilding building = thinCord();
  ASSERT_TRUE(site::checkInvariants(building.site).ok());
  const auto remedies = building.remedies("cord.over_tag");
  ASSERT_FALSE(remedies.empty());
  EXPECT_EQ(remedies.front().code, "move.outlet");
  EXPECT_EQ(textOf(remedies.front().arguments, "outlet"), "1-31");
  EXPECT_EQ(textOf(remedies.front().after, "verdict"), "notice");  // of its start, by a quick breaker
}

TEST(Remedies, AreEditsThatMendAndCanBeUndone) {
  const SmallBuilding building = thinCord();
  const auto remedies = building.remedies("cord.over_tag");
  ASSERT_FALSE(remedies.empty());
  SmallBuilding mended = building;
  ASSERT_TRUE(site::apply(remedies.front().edit, mended.site).ok());
  EXPECT_FALSE(mended.has("cord.over_tag"));
  EXPECT_LT(rules::worstOf(mended.findings()), rules::Severity::Caution);
  ASSERT_TRUE(site::apply(site::inverseOf(remedies.front().edit), mended.site).ok());
  EXPECT_EQ(mended.site, building.site);
}

TEST(Remedies, NeverOfferCircuitsThatAreOffLimits) {
  for (const auto use : {site::UseClass::Never, site::UseClass::AskFirst}) {
    SmallBuilding building = thinCord();
    building.circuit("14", 20.0, use);
    for (const Remedy& remedy : building.remedies("cord.over_tag")) {
      EXPECT_NE(textOf(remedy.arguments, "outlet"), "1-31");
    }
  }
}

TEST(Remedies, NeverOfferASocketThatIsMarkedOffLimits) {
  for (const auto use : {site::UseClass::Never, site::UseClass::AskFirst}) {
    SmallBuilding building = thinCord();
    site::Outlet outlet = building.site.at<site::Outlet>(site::OutletId("1-31"));
    for (site::Contact& contact : outlet.contacts) contact.use = use;
    building.site.all<site::Outlet>().put(outlet);
    for (const Remedy& remedy : building.remedies("cord.over_tag")) {
      EXPECT_NE(textOf(remedy.arguments, "outlet"), "1-31");
    }
  }
}

TEST(Remedies, NeverOfferABusyContactOrAFullCircuit) {
  SmallBuilding building = thinCord();
  building.machine("M1", 15.0, 14, 50.0, 16.0);
  building.plug("M1", "1-31");
  for (const Remedy& remedy : building.remedies("cord.over_tag")) {
    EXPECT_NE(textOf(remedy.arguments, "outlet"), "1-31");
  }
}

TEST(Remedies, OfferABetterCordWhereNoOutletReaches) {
  SmallBuilding building = thinCord();
  building.machine("M2", 14.5, 14, 50.0, 27.0);
  building.site.all<site::Outlet>().remove(site::OutletId("1-31"));
  building.site.all<site::Run>().remove(site::RunId("r1-31"));
  building.cord("C03", 12, 25.0);
  const auto remedies = building.remedies("cord.over_tag");
  ASSERT_FALSE(remedies.empty());
  EXPECT_EQ(remedies.front().code, "use.cord");
  EXPECT_EQ(textOf(remedies.front().arguments, "cord"), "C03");
}

TEST(Remedies, DoNotOfferUnrollingACordThatStaysTooLight) {
  SmallBuilding building = thinCord();
  building.machine("M2", 11.8, 14, 50.0, 24.0);
  building.site.all<site::Outlet>().remove(site::OutletId("1-31"));
  building.site.all<site::Run>().remove(site::RunId("r1-31"));
  auto use = building.site.at<site::ExtensionUse>(site::ExtensionUseId("xC08"));
  use.laying = {tables::Laying::Coiled, 12.0, {}};
  building.put(use);
  ASSERT_TRUE(building.has("cord.conductor_over_rating"));
  EXPECT_TRUE(building.remedies("cord.conductor_over_rating").empty());
  building.cord("C04", 12, 25.0);
  const auto remedies = building.remedies("cord.conductor_over_rating");
  ASSERT_EQ(remedies.size(), 1u);
  EXPECT_EQ(remedies.front().code, "use.cord");
}

TEST(Remedies, OfferUnrollingAHeavyCord) {
  SmallBuilding building = thinCord();
  building.machine("M2", 11.8, 16, 50.0, 24.0);
  building.site.all<site::Outlet>().remove(site::OutletId("1-31"));
  building.site.all<site::Run>().remove(site::RunId("r1-31"));
  building.cord("C08", 14, 50.0);
  auto use = building.site.at<site::ExtensionUse>(site::ExtensionUseId("xC08"));
  use.laying = {tables::Laying::Coiled, 20.0, {}};
  building.put(use);
  ASSERT_TRUE(building.has("cord.conductor_over_rating"));
  const auto remedies = building.remedies("cord.conductor_over_rating");
  ASSERT_EQ(remedies.size(), 1u);
  EXPECT_EQ(remedies.front().code, "unroll");
}

TEST(Remedies, PutACordWithoutEarthAsideAndProtectWetWork) {
  SmallBuilding building = thinCord();
  building.machine("M8", 10.5, 16, 35.0, 20.0);
  auto machine = building.site.at<site::Machine>(site::MachineId("M8"));
  machine.wet = true;
  building.put(machine);
  building.cord("C07", 14, 50.0);
  auto broken = building.site.at<site::Cord>(site::CordId("C07"));
  broken.make.pin = site::Pin::Missing;
  building.put(broken);
  building.cord("C02", 12, 25.0);
  building.cord("C11", 12, 25.0);
  auto guarded = building.site.at<site::Cord>(site::CordId("C11"));
  guarded.make.groundFaultDevice = true;
  building.put(guarded);
  building.site.all<site::Hookup>().remove(site::HookupId("hM2"));
  building.site.all<site::ExtensionUse>().remove(site::ExtensionUseId("xC08"));
  building.plug("M8", "1-13", "C07");
  EXPECT_EQ(building.findings().front().code, "earth.missing");
  for (const char* code : {"earth.missing", "wet.unprotected"}) {
    const auto remedies = building.remedies(code);
    ASSERT_FALSE(remedies.empty()) << code;
    EXPECT_EQ(remedies.front().code, "out_of_service");
    EXPECT_EQ(textOf(remedies.front().arguments, "cord"), "C11");
    SmallBuilding mended = building;
    ASSERT_TRUE(site::apply(remedies.front().edit, mended.site).ok());
    EXPECT_TRUE(mended.site.at<site::Cord>(site::CordId("C07")).outOfService.has_value());
  }
}

// A wet machine straight at an outlet without a device, with another such outlet beside it.
SmallBuilding wetAtTheWall() {
  SmallBuilding building;
  building.circuit("4", 20.0);
  building.circuit("14", 20.0);
  building.outlet("1-13", "4", 10.0);
  building.outlet("1-31", "14", 16.0);
  building.machine("M8", 10.5, 14, 50.0, 14.0);
  auto machine = building.site.at<site::Machine>(site::MachineId("M8"));
  machine.wet = true;
  building.put(machine);
  building.cord("C02", 12, 25.0);
  building.plug("M8", "1-13");
  return building;
}

TEST(Remedies, ProtectWetWorkAtTheWallByAnInLineDeviceAndByNothingLess) {
  SmallBuilding building = wetAtTheWall();
  ASSERT_TRUE(building.has("wet.unprotected"));
  EXPECT_TRUE(building.remedies("wet.unprotected").empty());
  building.cord("C11", 12, 25.0);
  auto guarded = building.site.at<site::Cord>(site::CordId("C11"));
  guarded.make.groundFaultDevice = true;
  building.put(guarded);
  const auto remedies = building.remedies("wet.unprotected");
  ASSERT_EQ(remedies.size(), 1u);
  EXPECT_EQ(textOf(remedies.front().arguments, "cord"), "C11");
  EXPECT_EQ(textOf(remedies.front().arguments, "outlet"), "1-13");
  ASSERT_TRUE(site::apply(remedies.front().edit, building.site).ok());
  EXPECT_TRUE(site::checkInvariants(building.site).ok());
  EXPECT_FALSE(building.has("wet.unprotected"));
}

TEST(Remedies, LeaveASoundTwoWireCordInService) {
  SmallBuilding building = thinCord();
  building.machine("M2", 9.0, 14, 50.0, 24.0);
  auto twoWire = building.site.at<site::Cord>(site::CordId("C08"));
  twoWire.make = SmallBuilding::make(14, 50.0);
  twoWire.make.conductors = site::known(2);
  twoWire.make.pin = site::Pin::NotNeeded;
  building.put(twoWire);
  building.site.all<site::Outlet>().remove(site::OutletId("1-31"));
  building.site.all<site::Run>().remove(site::RunId("r1-31"));
  building.cord("C03", 12, 25.0);
  const auto remedies = building.remedies("earth.missing");
  ASSERT_FALSE(remedies.empty());
  EXPECT_EQ(remedies.front().code, "use.cord");
  SmallBuilding mended = building;
  ASSERT_TRUE(site::apply(remedies.front().edit, mended.site).ok());
  EXPECT_FALSE(mended.site.at<site::Cord>(site::CordId("C08")).outOfService.has_value());
}

TEST(Remedies, OfferTheSameOutletWithoutAnExtensionWhereTheOwnCordReaches) {
  SmallBuilding building = thinCord();  // it works 4 m from its outlet
  building.site.all<site::Outlet>().remove(site::OutletId("1-31"));
  building.site.all<site::Run>().remove(site::RunId("r1-31"));
  const auto remedies = building.remedies("cord.over_tag");
  ASSERT_FALSE(remedies.empty());
  EXPECT_EQ(remedies.front().code, "move.outlet");
  EXPECT_EQ(textOf(remedies.front().arguments, "outlet"), "1-13");
  SmallBuilding mended = building;
  ASSERT_TRUE(site::apply(remedies.front().edit, mended.site).ok());
  EXPECT_TRUE(mended.site.all<site::ExtensionUse>().empty());
  EXPECT_FALSE(mended.has("cord.over_tag"));
}

TEST(Remedies, TakeAnExtensionForNeededWhereThePlanDoesNotSayWhereTheMachineWorks) {
  SmallBuilding building = thinCord();
  auto machine = building.site.at<site::Machine>(site::MachineId("M2"));
  machine.place.reset();
  building.put(machine);
  building.cord("C03", 12, 25.0);
  EXPECT_TRUE(building.remedies("cord.over_tag").empty());  // neither the own cord nor 25 ft are known to reach
  building.cord("C05", 12, 50.0);
  const auto remedies = building.remedies("cord.over_tag");
  ASSERT_FALSE(remedies.empty());
  EXPECT_EQ(remedies.front().code, "use.cord");
  EXPECT_EQ(textOf(remedies.front().arguments, "cord"), "C05");
}

// Two machines on one circuit, their own cords too short for any other.
SmallBuilding overload() {
  SmallBuilding building;
  building.circuit("6", 20.0);
  building.circuit("5", 20.0);
  building.outlet("2-22", "6", 10.0);
  building.outlet("2-24", "6", 12.0);
  building.outlet("2-18", "5", 20.0);
  building.machine("A", 13.0, 12, 25.0, 11.0);
  building.machine("B", 12.5, 12, 25.0, 11.0);
  building.plug("A", "2-22");
  building.plug("B", "2-24");
  return building;
}

TEST(Remedies, CureAnOverloadByAnotherCircuitNotByACord) {
  SmallBuilding building = overload();
  ASSERT_TRUE(building.has("breaker.trips"));
  building.cord("C03", 12, 25.0);
  const auto remedies = building.remedies("breaker.trips");
  ASSERT_FALSE(remedies.empty());
  EXPECT_EQ(remedies.front().code, "move.outlet_with_cord");
  EXPECT_EQ(textOf(remedies.front().arguments, "machine"), "B");
  EXPECT_EQ(textOf(remedies.front().arguments, "outlet"), "2-18");
  for (const Remedy& remedy : remedies) EXPECT_NE(remedy.code, "use.cord");
}

TEST(Remedies, OfferOtherHoursLast) {
  const SmallBuilding building = overload();
  const auto remedies = building.remedies("breaker.trips");
  ASSERT_FALSE(remedies.empty());
  EXPECT_EQ(remedies.front().code, "later");
}

TEST(Remedies, AreNoneForWhatNobodyOfTheCrewMayMend) {
  SmallBuilding building = thinCord();
  auto circuit = building.site.at<site::Circuit>(site::CircuitId("4"));
  circuit.size = site::known(units::WireSize::awg(14));
  building.put(circuit);
  ASSERT_TRUE(building.has("device.over_wire"));
  EXPECT_TRUE(building.remedies("device.over_wire").empty());
}

TEST(Remedies, AreTheSameOneByOneAndTogether) {
  const SmallBuilding building = thinCord();
  const auto present = building.findings();
  const auto all = remediesForAll(building.site, present);
  ASSERT_EQ(all.size(), present.size());
  for (std::size_t i = 0; i < present.size(); ++i) {
    const auto one = remediesFor(present[i], building.site, present);
    ASSERT_EQ(one.size(), all[i].size()) << present[i].code;
    for (std::size_t k = 0; k < one.size(); ++k) EXPECT_EQ(one[k].edit, all[i][k].edit);
  }
}

}  // namespace
}  // namespace cordreach::planning
