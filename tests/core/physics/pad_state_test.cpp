// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/pad_state.h"

#include <gtest/gtest.h>

#include "core/physics/load_test_support.h"
#include "tables/table.h"

namespace cordreach::physics {
namespace {

TEST(PadState, EveryFactorIsABandAndOurOwn) {
  for (const auto& row : tables::table("pad_drag").rows()) {
    const DragBand drag = padDrag(row.id());
    EXPECT_LE(drag.low, drag.likely) << row.id();
    EXPECT_LE(drag.likely, drag.high) << row.id();
    EXPECT_EQ(row.source().status, tables::SourceStatus::Own) << "no published value exists";
  }
}

TEST(PadState, FamiliesKnowWhichMachinesTheyAreFor) {
  EXPECT_EQ(*padFamilyRpm("slow-speed"), 350.0);
  EXPECT_EQ(*padFamilyRpm("burnish"), 3000.0);
  EXPECT_FALSE(padFamilyRpm("").has_value());
  EXPECT_EQ(familyDrag("slow-speed", 175.0).likely, 1.0);
  EXPECT_GT(familyDrag("slow-speed", 1600.0).likely, 1.0);
  EXPECT_LT(familyDrag("burnish", 175.0).likely, 1.0);
  EXPECT_EQ(familyDrag("", 1600.0).likely, 1.0);
}

// Our reference burnisher (own): 14.55 A at 120 V and 2000 rpm is 5.42 N m.
TEST(PlateTorque, OfTheReferenceBurnisher) {
  Nameplate plate = plateOf(LoadModel::RectifiedDc, 120.0, 14.55);
  EXPECT_FALSE(plateTorque(plate).has_value());
  plate.speedRpm = 2000.0;
  EXPECT_NEAR(plateTorque(plate)->si(), 5.42, 0.03);
  plate.runningCurrent = 18.48 * units::ampere;  // read with 30 % more drag
  EXPECT_GT(plateTorque(plate)->si(), 1.2 * 5.42);
}

// 1.5 hp at 175 rpm, the machine's friction taken off.
TEST(PlateTorque, OfASlowMachineIsItsShaftPowerOverSpeed) {
  Nameplate plate = plateOf(LoadModel::Induction, 120.0, 15.0);
  plate.shaftPower = 1.5 * units::horsepower;
  plate.speedRpm = 175.0;
  EXPECT_NEAR(plateTorque(plate)->si(), 1.5 * 745.7 / (175.0 * 0.10472), 1.0);
  plate.model = LoadModel::Universal;
  EXPECT_FALSE(plateTorque(plate).has_value());
}

}  // namespace
}  // namespace cordreach::physics
