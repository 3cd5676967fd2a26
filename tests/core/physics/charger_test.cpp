// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/charger.h"

#include <gtest/gtest.h>

#include <cmath>

namespace cordreach::physics {
namespace {

using units::hour;
using units::minute;

constexpr Charger kOvernight{4.0 * hour, 2.0 * hour};

TEST(Charger, DrawsItsPlateThenLessAndLessThenATwentieth) {
  EXPECT_EQ(chargeShareAt(kOvernight, 0.0 * hour), 1.0);
  EXPECT_EQ(chargeShareAt(kOvernight, 4.0 * hour), 1.0);
  EXPECT_NEAR(chargeShareAt(kOvernight, 5.0 * hour), std::sqrt(0.05), 1e-12);
  EXPECT_NEAR(chargeShareAt(kOvernight, 6.0 * hour), 0.05, 1e-12);
  EXPECT_EQ(chargeShareAt(kOvernight, 20.0 * hour), 0.05);
}

TEST(Charger, WithoutATaperFallsAtOnce) {
  const Charger plain{1.0 * hour, 0.0 * hour};
  EXPECT_EQ(chargeShareAt(plain, 1.0 * hour), 1.0);
  EXPECT_EQ(chargeShareAt(plain, 1.0 * hour + 1.0 * minute), 0.05);
  EXPECT_NEAR(chargeRmsShare(plain, 0.0 * hour, 2.0 * hour), std::sqrt((1.0 + 0.0025) / 2.0), 1e-12);
}

TEST(Charger, ItsRmsIsThatOfItsCurveSummedFinely) {
  for (const auto& [from, until] : {std::pair{0.0, 2.0}, {0.0, 12.0}, {3.5, 5.0}, {4.2, 4.3}, {5.0, 9.0}}) {
    constexpr int kParts = 20000;
    double sum = 0;
    for (int i = 0; i < kParts; ++i) {
      const double at = from + (until - from) * (i + 0.5) / kParts;
      sum += std::pow(chargeShareAt(kOvernight, at * hour), 2);
    }
    EXPECT_NEAR(chargeRmsShare(kOvernight, from * hour, until * hour), std::sqrt(sum / kParts), 1e-6) << from;
  }
}

TEST(Charger, IsContinuousFromThreeHoursOfItsLargestCurrent) {
  EXPECT_TRUE(isContinuous({3.0 * hour, 1.0 * hour}));
  EXPECT_FALSE(isContinuous({179.0 * minute, 10.0 * hour}));
}

}  // namespace
}  // namespace cordreach::physics
