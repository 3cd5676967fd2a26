// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "tiny_site.h"

namespace cordreach::rules {
namespace {

TEST(MachineVoltage, IsTenPercentAbout115OnA120VoltSystem) {
  TinySite tiny;
  tiny.given().voltage = sharp(103.5 * volt);
  EXPECT_FALSE(tiny.has("machine.voltage"));
  tiny.given().voltage = sharp(103.4 * volt);
  EXPECT_TRUE(tiny.has("machine.voltage"));
  tiny.given().voltage = sharp(126.5 * volt);
  EXPECT_FALSE(tiny.has("machine.voltage"));
  tiny.given().voltage = sharp(126.6 * volt);
  EXPECT_TRUE(tiny.has("machine.voltage"));
}

TEST(MachineVoltage, SharesTheDropOutBetweenItsParts) {
  TinySite tiny;
  tiny.given().voltage = sharp(100.0 * volt);
  tiny.given().drop = sharp(20.0 * volt);
  const Finding finding = tiny.found("machine.voltage").at(0);
  double sum = 0.0;
  for (const Reason& reason : finding.why) sum += reason.share.value();
  EXPECT_NEAR(sum, 1.0, 1e-12);
  // 50 ft of 14 AWG lose more than 50 ft of 12 AWG; both more than the 3 V up to the outlet.
  EXPECT_EQ(finding.why[0].code, "drop.own_cord");
  EXPECT_EQ(finding.why[1].code, "drop.extension");
}

TEST(MachineStall, IsAWarningColdOrWarm) {
  TinySite tiny;
  EXPECT_FALSE(tiny.has("machine.stall"));
  tiny.given().stalledWarm = true;
  EXPECT_TRUE(tiny.has("machine.stall"));
  EXPECT_EQ(tiny.verdict(), Severity::Warning);
  tiny.given().voltage = sharp(80.0 * volt);
  EXPECT_FALSE(tiny.has("machine.voltage"));  // that they are too few is told
  tiny.given().voltage = sharp(140.0 * volt);
  EXPECT_TRUE(tiny.has("machine.voltage"));
}

TEST(CordLighterThanMachine, ComparesCopper) {
  TinySite tiny;
  site::Cord cord = tiny.cord();
  cord.make.size = site::known(units::WireSize::awg(14));
  tiny.put(cord);
  EXPECT_FALSE(tiny.has("cord.lighter_than_machine"));
  cord.make.size = site::known(units::WireSize::awg(16));
  tiny.put(cord);
  EXPECT_TRUE(tiny.has("cord.lighter_than_machine"));
}

TEST(DropAdvisories, EndAtTheOutlet) {
  TinySite tiny;
  tiny.given().branchDrop = 3.6 * volt;
  tiny.given().outletDrop = 6.0 * volt;
  EXPECT_FALSE(tiny.has("drop.branch"));
  EXPECT_FALSE(tiny.has("drop.total"));
  tiny.given().branchDrop = 3.7 * volt;
  EXPECT_TRUE(tiny.has("drop.branch"));
  tiny.given().outletDrop = 6.1 * volt;
  EXPECT_TRUE(tiny.has("drop.total"));
  EXPECT_FALSE(tiny.has("drop.branch"));  // a part of what is told
  EXPECT_EQ(tiny.verdict(), Severity::Notice);
}

}  // namespace
}  // namespace cordreach::rules
