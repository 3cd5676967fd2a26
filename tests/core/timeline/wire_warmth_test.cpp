// SPDX-License-Identifier: GPL-3.0-or-later
#include "timeline/wire_warmth.h"

#include <gtest/gtest.h>

#include <cmath>

namespace cordreach::timeline {
namespace {

class SquareHeat : public BranchHeat {
 public:
  network::Branch warm(double poleRmsA, double neutralRmsA) const override {
    return {1.0 + 1e-3 * poleRmsA * poleRmsA, 1.0 + 1e-3 * neutralRmsA * neutralRmsA};
  }
};

WireWarmth wire() {
  return {std::make_shared<SquareHeat>(),
          [](double rmsA) { return units::Temperature::fromCelsius(30.0 + 0.1 * rmsA * rmsA); }};
}

const auto kNoLimit = units::Temperature::fromCelsius(1e6);

TEST(WireWarmth, FollowsItsFinalTemperatureWithOneTimeConstant) {
  WireWarmth warmth = wire();
  EXPECT_FALSE(warmth.carry({20.0, 10.0}, kWireTimeConstant, kNoLimit).has_value());
  const double share = 1.0 - std::exp(-1.0);
  EXPECT_NEAR(warmth.conductor().celsius(), 30.0 + 40.0 * share, 1e-9);
  EXPECT_NEAR(warmth.branch().poleOhm.real(), 1.0 + 0.4 * share, 1e-12);
  EXPECT_NEAR(warmth.branch().neutralOhm.real(), 1.0 + 0.1 * share, 1e-12);
}

TEST(WireWarmth, SaysWhenItPassesALimit) {
  WireWarmth warmth = wire();
  const auto limit = units::Temperature::fromCelsius(50.0);
  const auto reached = warmth.carry({20.0, 0.0}, 3600.0 * units::second, limit);
  ASSERT_TRUE(reached.has_value());
  EXPECT_NEAR(reached->si(), 300.0 * std::log(2.0), 1e-6);
  WireWarmth again = wire();
  static_cast<void>(again.carry({20.0, 0.0}, *reached, kNoLimit));
  EXPECT_NEAR(again.conductor().celsius(), 50.0, 1e-9);
}

}  // namespace
}  // namespace cordreach::timeline
