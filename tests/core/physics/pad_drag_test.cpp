// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/pad_drag.h"

#include <gtest/gtest.h>

#include "tables/table.h"

namespace cordreach::physics {
namespace {

TEST(PadRadius, IsTwoThirdsForADiscAndTheRimForAThinRing) {
  const units::Length outer = 10.0 * units::inch;
  EXPECT_NEAR(effectivePadRadius(outer) / outer, 2.0 / 3.0, 1e-12);
  EXPECT_NEAR(effectivePadRadius(outer, 0.9999 * outer) / outer, 1.0, 1e-3);
  EXPECT_NEAR(cuppedPadRadius(outer) / outer, 0.86, 0.005);
}

TEST(PadDrag, AmmeterReadingGivesTheTorqueBack) {
  const PadMotor motor;
  const auto torque = 5.42 * units::newtonMetre;
  EXPECT_NEAR(torqueFromAmps(motor, burnisherAmps(motor, torque)).si(), 5.42, 1e-12);
}

TEST(PadFriction, IsABandForEveryTask) {
  for (const auto& row : tables::table("pad_friction").rows()) {
    const PadFriction friction = padFriction(row.id()).value();
    EXPECT_LE(friction.low, friction.likely) << row.id();
    EXPECT_LE(friction.likely, friction.high) << row.id();
    EXPECT_EQ(row.source().status, tables::SourceStatus::Own) << "no published value exists";
  }
  EXPECT_EQ(padFriction("skating").error().code, "pad.unknown_task");
}

}  // namespace
}  // namespace cordreach::physics
