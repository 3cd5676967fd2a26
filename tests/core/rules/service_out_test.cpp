// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "tiny_site.h"

namespace cordreach::rules {
namespace {

TEST(ServiceOut, SpeaksOfMachineAndCordPutAside) {
  TinySite tiny;
  EXPECT_FALSE(tiny.has("service.out"));
  site::Machine machine = tiny.machine();
  machine.outOfService = site::OutOfService{"cut cord", "", ""};
  tiny.put(machine);
  ASSERT_EQ(tiny.found("service.out").size(), 1u);
  EXPECT_EQ(tiny.found("service.out")[0].subjects.front().kind, SubjectKind::Machine);
  site::Cord cord = tiny.cord();
  cord.outOfService = site::OutOfService{"taped", "", ""};
  tiny.put(cord);
  EXPECT_EQ(tiny.found("service.out").size(), 2u);
}

}  // namespace
}  // namespace cordreach::rules
