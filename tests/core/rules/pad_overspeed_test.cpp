// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "tiny_site.h"

namespace cordreach::rules {
namespace {

void padOf(TinySite& tiny, double padHertz) {
  site::Pad pad{.id = site::PadId("d1"), .name = "Polish pad"};
  pad.ratedSpeed = site::known(padHertz * units::hertz);
  tiny.put(pad);
  site::Machine machine = tiny.machine();
  machine.speed = site::known(25.0 * units::hertz);
  machine.pad = pad.id;
  tiny.put(machine);
}

TEST(PadOverspeed, StartsJustAboveThePadsRating) {
  TinySite tiny;
  padOf(tiny, 25.0);
  EXPECT_FALSE(tiny.has("pad.overspeed"));
  padOf(tiny, 24.9);
  ASSERT_TRUE(tiny.has("pad.overspeed"));
  EXPECT_EQ(tiny.found("pad.overspeed")[0].subjects.front().kind, SubjectKind::Pad);
}

TEST(PadOverspeed, LooksAtThePadOfTheHookupFirst) {
  TinySite tiny;
  padOf(tiny, 50.0);
  site::Pad slow{.id = site::PadId("d2"), .name = "Strip pad"};
  slow.ratedSpeed = site::known(6.0 * units::hertz);
  tiny.put(slow);
  EXPECT_FALSE(tiny.has("pad.overspeed"));
  site::Hookup hookup = tiny.hookup();
  hookup.pad = slow.id;
  tiny.put(hookup);
  EXPECT_TRUE(tiny.has("pad.overspeed"));
}

}  // namespace
}  // namespace cordreach::rules
