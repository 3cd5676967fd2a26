// SPDX-License-Identifier: GPL-3.0-or-later
// Buildings full of motors around their pull-out: every one ends, and what is marked deserves it.
#include <gtest/gtest.h>

#include "network/solve.h"
#include "support/random_building.h"

namespace cordreach {
namespace {

using network::EndReason;
using testing::Dice;

testing::Law weakMotor(Dice& dice, double currentA, double atPullOut) {
  // Pull-out placed so that the motor's own circuit would hold it at 0.9 to 1.1 of it.
  return testing::motor({currentA, 115, 110.0 / atPullOut, dice.between(0.5, 0.9), dice.between(4, 7) * currentA});
}

network::Network hundredMotors(std::uint64_t seed, double busOhm) {
  Dice dice(seed);
  network::Network building;
  building.panels.push_back(testing::sourcePanel({120.0, -120.0}, {busOhm, busOhm / 2}));
  for (std::size_t c = 0; c < 25; ++c) {
    auto circuit = testing::chain({c % 2}, {testing::randomBranch(dice), testing::randomBranch(dice),
                                            testing::randomBranch(dice), testing::randomBranch(dice)});
    for (std::size_t n = 0; n < 4; ++n) {
      testing::addLoad(circuit, n, weakMotor(dice, dice.between(1, 8), dice.between(0.9, 1.1)));
      circuit.loads.back().label = std::to_string(100 * c + n);
    }
    building.circuits.push_back(circuit);
  }
  return building;
}

void expectSound(const network::Network& building, const network::Solution& solution, std::uint64_t seed) {
  ASSERT_EQ(solution.summary.end, EndReason::Converged)
      << "seed " << seed << ", steps " << solution.summary.steps << ", passes " << solution.summary.passes
      << ", stalled " << solution.summary.stalled.size() << ", residual " << solution.summary.residualA << " at "
      << solution.summary.worstPart << " change " << solution.summary.lastChangeV;
  ASSERT_LT(solution.summary.residualA, 1e-6) << "seed " << seed;
  for (std::size_t c = 0; c < building.circuits.size(); ++c) {
    for (const auto& load : solution.circuits[c].loads) {
      ASSERT_TRUE(load.stalled || load.point.hasRunningPoint) << "seed " << seed;
    }
  }
}

TEST(HundredMotorsOnOnePanel, EndConvergedAroundTheirPullOut) {
  for (std::uint64_t seed = 0; seed < 200; ++seed) {
    for (const double busOhm : {0.0, 0.005, 0.02, 0.1}) {
      const auto building = hundredMotors(seed, busOhm);
      expectSound(building, solve(building), seed);
    }
  }
}

TEST(HundredMotorsOnOnePanel, AllStandTogetherWhenTheyAreAlike) {
  std::size_t before = 0;
  for (int step = 0; step < 60; ++step) {
    network::Network building;
    building.panels.push_back(testing::sourcePanel({120.0}, {0.0005 * step, 0.0}));
    for (std::size_t c = 0; c < 100; ++c) {
      auto circuit = testing::chain({0}, {{0.1, 0.1}});
      testing::addLoad(circuit, 0, testing::motor({}));
      building.circuits.push_back(circuit);
    }
    const auto solution = solve(building);
    ASSERT_EQ(solution.summary.end, EndReason::Converged);
    const std::size_t stalled = solution.summary.stalled.size();
    EXPECT_TRUE(stalled == 0 || stalled == 100) << stalled << " at step " << step;
    EXPECT_GE(stalled, before) << "step " << step;
    before = stalled;
  }
  EXPECT_EQ(before, 100u);
}

TEST(HundredMotorsOnOnePanel, StallTheSameInAnyOrder) {
  for (std::uint64_t seed = 0; seed < 100; ++seed) {
    const auto building = hundredMotors(seed, 0.01);
    auto turned = building;
    std::reverse(turned.circuits.begin(), turned.circuits.end());
    for (auto& circuit : turned.circuits) std::reverse(circuit.loads.begin(), circuit.loads.end());
    auto one = solve(building).summary.stalled;
    auto other = solve(turned).summary.stalled;
    std::sort(one.begin(), one.end());
    std::sort(other.begin(), other.end());
    EXPECT_EQ(one, other) << "seed " << seed;
  }
}

// What is taken off a motor's path can only help it: a building with less source impedance stalls no more machines.
TEST(HundredMotorsOnOnePanel, StallNoMoreOfThemOnAStrongerSource) {
  for (std::uint64_t seed = 0; seed < 50; ++seed) {
    std::size_t before = 0;
    for (const double busOhm : {0.0, 0.005, 0.01, 0.02, 0.04}) {
      const std::size_t stalled = solve(hundredMotors(seed, busOhm)).summary.stalled.size();
      EXPECT_GE(stalled, before) << "seed " << seed << " bus " << busOhm;
      before = stalled;
    }
  }
}

TEST(RandomBuilding, EndsConvergedWhenAllItsMotorsAreWeak) {
  testing::BuildingMix mix;
  mix.circuits = 12;
  for (std::uint64_t seed = 0; seed < 1000; ++seed) {
    auto building = testing::randomBuilding(seed, mix);
    Dice dice(seed);
    for (auto& circuit : building.circuits) {
      for (auto& load : circuit.loads) {
        if (load.law->pullOutVoltageV() <= 0) continue;
        const double acrossV = load.law->pullOutVoltageV() > 150 ? 200 : 110;
        const double currentA = dice.between(1, 12);
        load.law = testing::motor({currentA, acrossV, acrossV / dice.between(0.9, 1.1), 0.7, 5 * currentA});
      }
    }
    expectSound(building, solve(building), seed);
  }
}

}  // namespace
}  // namespace cordreach
