// SPDX-License-Identifier: GPL-3.0-or-later
// What floor-care people say of burnishers and their cords, held to one stated case. Source of every claim: common
// practice, no source. Case: a 15 A machine with its own 75 ft 14 AWG cord, 60 ft of 12 AWG in the wall, a 20 A
// circuit.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "rules/judge.h"
#include "site/site.h"
#include "study/assess.h"

namespace cordreach::rules {
namespace {

using ::testing::Contains;
using ::testing::Not;
using units::ampere;
using units::foot;
using units::WireSize;

const site::HookupId kHookup("h1");
const site::CircuitId kCircuit("c1");

site::CordMake cordOf(int gauge, double lengthFt) {
  site::CordMake make;
  make.type = "SJTW";
  make.size = site::known(WireSize::awg(gauge));
  make.conductors = site::known(3);
  make.length = site::known(lengthFt * foot);
  make.plug = "5-15";
  return make;
}

void addBuilding(site::Site& site) {
  site::Supply supply{site::SupplyId("s1"), {}, {}, {}, {}, {}, {}, {}};
  supply.loopImpedance = site::known(0.06 * units::ohm);
  supply.openCircuit = site::known(120.0 * units::volt);
  site.all<site::Supply>().put(supply);
  site::Panel panel{site::PanelId("p1")};
  panel.name = "LA";
  panel.supply = supply.id;
  site.all<site::Panel>().put(panel);
  site::Circuit circuit{kCircuit, panel.id};
  circuit.number = "1";
  circuit.phases = {0};
  circuit.rating = site::known(20.0 * ampere);
  circuit.size = site::known(WireSize::awg(12));
  site.all<site::Circuit>().put(circuit);
  site::Outlet outlet{site::OutletId("o1")};
  for (const char* name : {"upper", "lower"}) {
    site::Contact contact;
    contact.name = name;
    contact.assignment = site::Assignment{kCircuit, site::HowKnown::Traced, {}, {}};
    contact.receptacle = "5-20";
    outlet.contacts.push_back(contact);
  }
  site.all<site::Outlet>().put(outlet);
  site::Run run{site::RunId("r1"), kCircuit, {}, outlet.id};
  run.length = site::known(60.0 * foot);
  site.all<site::Run>().put(run);
}

void addMachine(site::Site& site, tables::LoadClass loadClass) {
  site::Machine machine{site::MachineId("m1")};
  machine.name = "Burnisher";
  machine.kind = "burnisher";
  site::Inlet inlet;
  inlet.name = "A";
  inlet.loadClass = loadClass;
  inlet.plate = site::known(15.0 * ampere);
  inlet.cord = cordOf(14, 75.0);
  machine.inlets.push_back(inlet);
  site.all<site::Machine>().put(machine);
}

struct Extension {
  int gauge;
  double lengthFt;
};

struct Judged {
  study::Answer answer;
  std::vector<Finding> findings;

  [[nodiscard]] Severity verdict() const { return verdictOf(kHookup, findings); }
  [[nodiscard]] const study::HookupAnswer& hookup() const { return *answer.find(kHookup); }
  [[nodiscard]] std::vector<std::string> codes() const {
    std::vector<std::string> codes;
    for (const Finding& finding : findings) codes.push_back(finding.code);
    return codes;
  }
};

struct PadCase {
  double ratedRpm;
  double dragFactor;
};

void addPad(site::Site& site, const PadCase& of, site::Hookup& hookup) {
  site::Machine machine = site.at<site::Machine>(hookup.machine);
  machine.speed = site::known(2000.0 / 60.0 * units::hertz);
  site.all<site::Machine>().put(machine);
  site::Pad pad{site::PadId("pad")};
  pad.ratedSpeed = site::known(of.ratedRpm / 60.0 * units::hertz);
  pad.dragFactor = site::known(of.dragFactor);
  site.all<site::Pad>().put(pad);
  hookup.pad = pad.id;
}

Judged judged(tables::LoadClass loadClass, const std::optional<Extension>& extension,
              const std::optional<PadCase>& pad = {}) {
  site::Site site{site::SiteId("claims")};
  addBuilding(site);
  addMachine(site, loadClass);
  const site::OutletSocket wall{site::OutletId("o1"), "upper"};
  site::Hookup hookup{kHookup, site::MachineId("m1"), "A", wall};
  if (extension) {
    site::Cord cord{site::CordId("x1")};
    cord.label = "X1";
    cord.make = cordOf(extension->gauge, extension->lengthFt);
    cord.sockets = {"5-15"};
    site.all<site::Cord>().put(cord);
    site.all<site::ExtensionUse>().put(site::ExtensionUse{site::ExtensionUseId("u1"), cord.id, wall});
    hookup.socket = site::CordSocket{cord.id, 0};
  }
  if (pad) addPad(site, *pad, hookup);
  site.all<site::Hookup>().put(hookup);
  Judged all{study::assess(site), {}};
  all.findings = judge(site, all.answer);
  return all;
}

// Common practice, no source: a burnisher with a 75 ft cord of its own needs no extension.
TEST(CommonPracticeBurnisherCords, NoExtensionIsSound) {
  const Judged alone = judged(tables::LoadClass::Induction, {});
  EXPECT_LE(alone.verdict(), Severity::Notice);
  EXPECT_FALSE(alone.hookup().breaker.trip->earliest.has_value());
}

// Common practice, no source: where one is needed, it is one size heavier.
TEST(CommonPracticeBurnisherCords, OneSizeHeavierIsSound) {
  EXPECT_LE(judged(tables::LoadClass::Induction, Extension{12, 50.0}).verdict(), Severity::Notice);
}

// Common practice, no source: a thin extension pops breakers. True of an induction motor: it has no lasting running
// point once the cords are warm, and draws what a stalled motor draws.
TEST(CommonPracticeBurnisherCords, ThinExtensionStallsAnInductionMotorAndTrips) {
  const Judged thin = judged(tables::LoadClass::Induction, Extension{16, 100.0});
  EXPECT_FALSE(thin.hookup().stalledCold);
  EXPECT_TRUE(thin.hookup().stalledWarm);
  ASSERT_TRUE(thin.hookup().breaker.trip->likely.has_value());
  EXPECT_LT(thin.hookup().breaker.trip->likely->si(), 120.0);
  EXPECT_THAT(thin.codes(), Contains("machine.stall"));
  EXPECT_THAT(thin.codes(), Contains("breaker.trips"));
}

// Common practice, no source: it gets too hot to touch. Straight on the floor it passes its 60 °C inside.
TEST(CommonPracticeBurnisherCords, ThinExtensionOverheats) {
  for (const auto loadClass : {tables::LoadClass::Induction, tables::LoadClass::RectifiedDc}) {
    const Judged thin = judged(loadClass, Extension{16, 100.0});
    EXPECT_THAT(thin.codes(), Contains("cord.over_tag"));
    EXPECT_THAT(thin.codes(), Contains("cord.lighter_than_machine"));
  }
  EXPECT_THAT(judged(tables::LoadClass::Induction, Extension{16, 100.0}).codes(),
              Contains("cord.conductor_over_rating"));
}

// Where physics disagrees with the saying: a rectified motor slows instead of drawing more. The breaker sees nothing
// and does not protect the cord.
TEST(CommonPracticeBurnisherCords, ThinExtensionTripsNothingOnARectifiedMotor) {
  const Judged thin = judged(tables::LoadClass::RectifiedDc, Extension{16, 100.0});
  EXPECT_FALSE(thin.hookup().stalledWarm);
  EXPECT_FALSE(thin.hookup().breaker.trip->earliest.has_value());
  EXPECT_THAT(thin.codes(), Not(Contains("breaker.trips")));
  EXPECT_NEAR(thin.hookup().current.likely.si(), 15.0, 0.1);
  EXPECT_GE(thin.verdict(), Severity::Warning);
}

// Common practice, no source: burnishers turn at about 2000 rpm, scrubbing pads are made for about 300, soft polishing
// pads for about 600. Neither belongs on one.
TEST(CommonPracticePads, PadsForSlowMachinesAreADangerOnABurnisher) {
  for (const double ratedRpm : {300.0, 600.0}) {
    const Judged wrong = judged(tables::LoadClass::RectifiedDc, {}, PadCase{ratedRpm, 1.0});
    EXPECT_EQ(wrong.verdict(), Severity::Danger);
    EXPECT_THAT(wrong.codes(), Contains("pad.overspeed"));
  }
  EXPECT_THAT(judged(tables::LoadClass::RectifiedDc, {}, PadCase{2500.0, 1.0}).codes(), Not(Contains("pad.overspeed")));
}

// Common practice, no source: the wrong pad drags until the breaker pops. True of eight tenths more drag; where physics
// disagrees: a quarter more loads the machine and its cord, and a 20 A breaker holds.
TEST(CommonPracticePads, OnlyMuchMoreDragTripsTheBreaker) {
  EXPECT_THAT(judged(tables::LoadClass::RectifiedDc, {}, PadCase{300.0, 1.25}).codes(), Not(Contains("breaker.trips")));
  EXPECT_THAT(judged(tables::LoadClass::RectifiedDc, {}, PadCase{300.0, 1.8}).codes(), Contains("breaker.trips"));
}

}  // namespace
}  // namespace cordreach::rules
