// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/coincidence.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <vector>

#include "support/dice.h"

namespace cordreach::study {
namespace {

using units::ampere;

Coincidence of(const std::vector<ComesAndGoes>& loads) { return coincidenceOf(loads); }

TEST(Coincidence, OfNothingIsNothingAtAnyTime) {
  EXPECT_EQ(of({}).likely, units::Current{});
  EXPECT_EQ(of({}).worst, units::Current{});
  EXPECT_EQ(of({}).together, 1.0);
}

TEST(Coincidence, OfOneLoadIsItselfOnlyIfItIsOnForHalfTheTime) {
  EXPECT_EQ(of({{9.0 * ampere, 0.35}}).likely, units::Current{});
  EXPECT_NEAR(of({{9.0 * ampere, 0.5}}).likely.in(ampere), 9.0, 1e-9);
  EXPECT_NEAR(of({{9.0 * ampere, 1.0}}).likely.in(ampere), 9.0, 1e-9);
  EXPECT_EQ(of({{9.0 * ampere, 0.35}}).worst, 9.0 * ampere);
}

TEST(Coincidence, OfManyThatAreMostlyOffIsNotNothing) {
  const std::vector<ComesAndGoes> ten(10, {2.0 * ampere, 0.4});
  EXPECT_NEAR(of(ten).likely.in(ampere), 8.0, 0.02);  // binomial of ten at 0.4: median four
  EXPECT_NEAR(of(ten).worst.in(ampere), 20.0, 1e-9);
  EXPECT_NEAR(of(ten).together, 1.048576e-4, 1e-12);
}

TEST(Coincidence, OfTwoEqualHalvesIsOneOfThem) {
  const auto two = of({{6.0 * ampere, 0.5}, {6.0 * ampere, 0.5}});
  EXPECT_NEAR(two.likely.in(ampere), 6.0, 0.01);
  EXPECT_NEAR(two.together, 0.25, 1e-12);
}

// Against drawing the loads many times.
TEST(Coincidence, IsTheMiddleOfManyDraws) {
  testing::Dice dice(7);
  for (int round = 0; round < 5; ++round) {
    std::vector<ComesAndGoes> loads;
    for (int i = 0; i < 6; ++i) loads.push_back({dice.between(0.5, 9.0) * ampere, dice.between(0.1, 0.9)});
    std::vector<double> drawn;
    for (int i = 0; i < 40001; ++i) {
      double sum = 0;
      for (const ComesAndGoes& load : loads) sum += dice.chance(load.onFraction) ? load.current.in(ampere) : 0.0;
      drawn.push_back(sum);
    }
    std::sort(drawn.begin(), drawn.end());
    const double likely = of(loads).likely.in(ampere);
    EXPECT_GE(likely, drawn[drawn.size() * 49 / 100] - 0.02);
    EXPECT_LE(likely, drawn[drawn.size() * 51 / 100] + 0.02);
  }
}

}  // namespace
}  // namespace cordreach::study
