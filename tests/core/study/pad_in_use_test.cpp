// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/pad_in_use.h"

#include <gtest/gtest.h>

#include "physics/pad_drag.h"
#include "study/assess.h"
#include "study/machine_plate.h"
#include "support/small_site.h"

namespace cordreach::study {
namespace {

using tables::LoadClass;
using testing::SmallSite;
using units::newton;

struct Floor {
  SmallSite building = SmallSite().circuit("1", 20, 60).machine("M", LoadClass::RectifiedDc, 15);

  Floor() {
    building.plug("M", SmallSite::at("1"));
    site::Machine machine = building.site.at<site::Machine>(site::MachineId("M"));
    machine.speed = site::known(1600.0 / 60.0 * units::hertz);
    building.site.all<site::Machine>().put(machine);
  }
  void put(const site::Pad& pad) {
    building.site.all<site::Pad>().put(pad);
    site::Hookup hookup = this->hookup();
    hookup.pad = pad.id;
    building.site.all<site::Hookup>().put(hookup);
  }
  [[nodiscard]] site::Hookup hookup() const { return building.site.at<site::Hookup>(site::HookupId("HM")); }
  [[nodiscard]] physics::Nameplate plate() const { return nameplateOf(building.site, hookup(), 120.0 * units::volt); }
  [[nodiscard]] PadDrag drag() const { return padDragOf(building.site, hookup(), plate()); }
  [[nodiscard]] double amps() const { return assess(building.site).find(site::HookupId("HM"))->current.likely.si(); }
};

const site::PadId kPad("P");

TEST(PadInUse, NoPadChangesNothing) {
  const Floor floor;
  EXPECT_EQ(floor.drag().factor.likely, 1.0);
  EXPECT_FALSE(floor.drag().guessed);
}

TEST(PadInUse, AStatedFactorIsTaken) {
  Floor floor;
  floor.put({.id = kPad, .family = site::PadFamily::SlowSpeed, .dragFactor = site::known(1.3)});
  EXPECT_EQ(floor.drag().factor.likely, 1.3);
  EXPECT_FALSE(floor.drag().guessed);
}

// The reference's 30 % more drag: 14.6 A become 18.5.
TEST(PadInUse, ASlowMachinesPadOnAFastOneDragsThirtyPerCentMore) {
  Floor floor;
  const double usualA = floor.amps();
  floor.put({.id = kPad, .family = site::PadFamily::SlowSpeed});
  EXPECT_EQ(floor.drag().factor.likely, 1.3);
  EXPECT_TRUE(floor.drag().guessed);
  EXPECT_NEAR(floor.amps() / usualA, 18.48 / 14.55, 0.003);
  EXPECT_EQ(*ratedRpmOf(floor.building.site.at<site::Pad>(kPad)), 350.0);
}

TEST(PadInUse, ConditionsMultiply) {
  Floor floor;
  floor.put({.id = kPad, .condition = site::PadCondition::Loaded, .offCentre = true});
  EXPECT_NEAR(floor.drag().factor.likely, 1.3 * 1.15, 1e-12);
  EXPECT_LT(floor.drag().factor.low, floor.drag().factor.likely);
  EXPECT_GT(dragAt(floor.drag().factor, Corner::Adverse), floor.drag().factor.likely);
}

// T = mu N r against the torque behind the plate.
TEST(PadInUse, FrictionAndForceMakeTorque) {
  Floor floor;
  site::Machine machine = floor.building.site.at<site::Machine>(site::MachineId("M"));
  machine.headForce = site::known(80.0 * newton);
  floor.building.site.all<site::Machine>().put(machine);
  floor.put({.id = kPad, .diameter = site::known(20.0 * units::inch), .friction = site::known(0.52)});
  const double torque = 0.52 * 80.0 * (2.0 / 3.0 * 0.254);
  EXPECT_NEAR(floor.drag().factor.likely, torque / physics::plateTorque(floor.plate())->si(), 1e-9);
  EXPECT_TRUE(floor.drag().guessed);
}

TEST(PadInUse, FrictionAloneIsHeldAgainstTheUsualOne) {
  Floor floor;
  floor.put({.id = kPad, .friction = site::known(0.52)});
  EXPECT_NEAR(floor.drag().factor.likely, 0.52 / physics::padFriction("burnish").value().likely, 1e-12);
}

// Its ammeter was read with this very pad, so its friction is in the amps already.
TEST(PadInUse, AReadMachineWithItsUsualPadIsCalibrated) {
  Floor floor;
  floor.put({.id = kPad, .friction = site::known(0.52)});
  site::Machine machine = floor.building.site.at<site::Machine>(site::MachineId("M"));
  machine.pad = kPad;
  machine.inlets.front().running = site::known(14.6 * units::ampere);
  floor.building.site.all<site::Machine>().put(machine);
  EXPECT_EQ(floor.drag().factor.likely, 1.0);
  EXPECT_FALSE(floor.drag().guessed);
}

}  // namespace
}  // namespace cordreach::study
