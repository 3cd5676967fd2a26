// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "tiny_site.h"

namespace cordreach::rules {
namespace {

TEST(EarthMissing, SpeaksOfAnExtensionWithoutItsPin) {
  TinySite tiny;
  EXPECT_FALSE(tiny.has("earth.missing"));
  site::Cord cord = tiny.cord();
  cord.make.pin = site::Pin::Missing;
  tiny.put(cord);
  const auto found = tiny.found("earth.missing");
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].severity, Severity::Danger);
  EXPECT_EQ(found[0].subjects.front(), (Subject{SubjectKind::Cord, "x1"}));
  EXPECT_EQ(found[0].why.front().code, "earth.pin_missing");
  EXPECT_EQ(found[0].why.back().code, "earth.no_ground_fault_device");
  EXPECT_EQ(tiny.verdict(), Severity::Danger);
}

TEST(EarthMissing, SpeaksOfATwoWireCordToAnEarthedMachine) {
  TinySite tiny;
  site::Cord cord = tiny.cord();
  cord.make.conductors = site::known(2);
  tiny.put(cord);
  ASSERT_TRUE(tiny.has("earth.missing"));
  EXPECT_EQ(tiny.found("earth.missing")[0].why.front().code, "earth.two_wire_cord");
}

TEST(EarthMissing, LeavesADoubleInsulatedMachineAlone) {
  TinySite tiny;
  site::Machine machine = tiny.machine();
  machine.doubleInsulated = true;
  machine.inlets[0].cord.pin = site::Pin::NotNeeded;
  tiny.put(machine);
  EXPECT_FALSE(tiny.has("earth.missing"));
}

}  // namespace
}  // namespace cordreach::rules
