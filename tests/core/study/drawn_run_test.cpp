// SPDX-License-Identifier: GPL-3.0-or-later
// The length of a run that was drawn and not measured.
#include <gtest/gtest.h>

#include "study/assumptions.h"

namespace cordreach::study {
namespace {

site::Run drawn() {
  site::Run run{site::RunId("R1"), site::CircuitId("C1"), std::nullopt, site::OutletId("O1")};
  run.path = {{0, 0}, {6, 0}, {6, 8}};
  return run;
}

TEST(DrawnRun, IsItsWayWithWhatGoesUpAndDown) {
  site::Run run = drawn();
  run.drops = site::known(5.0 * units::metre);
  const auto length = drawnRun(run);
  ASSERT_TRUE(length.has_value());
  EXPECT_DOUBLE_EQ(length->value.in(units::metre), 19.0);
  EXPECT_LT(length->low.value(), length->value);
  EXPECT_GT(length->high.value(), length->value);
}

// What nobody said makes the band wider and the run no shorter.
TEST(DrawnRun, WithoutDropsIsLessSure) {
  site::Run run = drawn();
  const auto unsure = drawnRun(run);
  run.drops = site::known(6.0 * units::metre);
  const auto sure = drawnRun(run);
  ASSERT_TRUE(unsure && sure);
  EXPECT_DOUBLE_EQ(unsure->value.si(), sure->value.si());
  EXPECT_LT(unsure->low.value(), sure->low.value());
  EXPECT_GT(unsure->high.value(), sure->high.value());
}

TEST(DrawnRun, IsNothingWithoutAPath) {
  site::Run run = drawn();
  run.path.clear();
  EXPECT_FALSE(drawnRun(run).has_value());
}

}  // namespace
}  // namespace cordreach::study
