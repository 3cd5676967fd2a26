// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "tiny_site.h"

namespace cordreach::rules {
namespace {

void tagged(TinySite& tiny, double amperes) {
  site::Cord cord = tiny.cord();
  cord.tag = site::known(amperes * ampere);
  tiny.put(cord);
}

TEST(CordOverTag, ComparesTheTagWithNameplateAmps) {
  TinySite tiny;
  tagged(tiny, 15.0);
  tiny.extensionGiven().current = sharp(16.5 * ampere);
  EXPECT_FALSE(tiny.has("cord.over_tag"));
  tagged(tiny, 14.9);
  const auto found = tiny.found("cord.over_tag");
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].subjects.front(), (Subject{SubjectKind::Cord, "x1"}));
  EXPECT_EQ(found[0].severity, Severity::Warning);
  EXPECT_EQ(found[0].why.front().code, "share.machine");
}

TEST(CordOverTag, ComparesTheTableWithTheLargerOfPlateAndSolvedAmps) {
  TinySite tiny;
  site::Cord cord = tiny.cord();
  cord.make.size = site::known(units::WireSize::awg(14));  // 18 A by the table
  tiny.put(cord);
  tiny.extensionGiven().current = sharp(18.0 * ampere);
  EXPECT_FALSE(tiny.has("cord.over_tag"));
  tiny.extensionGiven().current = sharp(18.1 * ampere);
  EXPECT_TRUE(tiny.has("cord.over_tag"));
}

TEST(CordOverTag, NeverRaisesTheTableInACoolRoomButLowersItInAHotOne) {
  TinySite tiny;
  site::Cord cord = tiny.cord();
  cord.make.size = site::known(units::WireSize::awg(16));  // 13 A
  tiny.put(cord);
  tiny.extensionGiven().plateSum = 13.5 * ampere;
  tiny.extensionGiven().current = sharp(13.5 * ampere);
  tiny.site.ambient.room = site::known(units::Temperature::fromCelsius(10.0));
  EXPECT_TRUE(tiny.has("cord.over_tag"));
  tiny.extensionGiven().plateSum = 12.5 * ampere;
  tiny.extensionGiven().current = sharp(12.5 * ampere);
  EXPECT_FALSE(tiny.has("cord.over_tag"));
  tiny.site.ambient.room = site::known(units::Temperature::fromCelsius(35.0));  // 0.91: 11.8 A
  EXPECT_TRUE(tiny.has("cord.over_tag"));
}

TEST(CordOverTag, LooksAtTheMachinesOwnCordToo) {
  TinySite tiny;
  site::Machine machine = tiny.machine();
  machine.inlets[0].cord.size = site::known(units::WireSize::awg(16));
  tiny.put(machine);
  const auto found = tiny.found("cord.over_tag");
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].subjects.front(), (Subject{SubjectKind::Machine, "m1"}));
}

TEST(CordOverTag, SumsTwoMachinesOnOneExtension) {
  TinySite tiny;
  tagged(tiny, 15.0);
  tiny.extensionGiven().plateSum = 15.1 * ampere;
  EXPECT_TRUE(tiny.has("cord.over_tag"));
}

}  // namespace
}  // namespace cordreach::rules
