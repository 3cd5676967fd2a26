// SPDX-License-Identifier: GPL-3.0-or-later
// The ladder against closed forms: no feedback, a fixed way out.
#include "physics/cord_ladder.h"

#include <cmath>

#include <gtest/gtest.h>

namespace cordreach::physics {
namespace {

using units::ampere;
using units::second;

units::Temperature celsius(double value) { return units::Temperature::fromCelsius(value); }

// One capacity behind one resistance: 10 J/(m K) and 2 K m/W, so 20 s.
CordLadder oneNode() {
  CordLadder ladder;
  ladder.capacityJPerMK = {1e-6, 1e-6, 10.0};
  ladder.resistance01 = ladder.resistance12 = 1e-6;
  ladder.ohmPerM20 = 1.0;
  ladder.surface.throughCover = 2.0 * units::kelvinMetrePerWatt;
  return ladder;
}

TEST(LadderRun, FollowsTheExponentialOfOneNode) {
  LadderRun run(oneNode(), celsius(25));
  double elapsed = 0.0;
  for (const double interval : {0.5, 3.0, 10.0, 40.0}) {
    run.advance(5.0 * ampere, interval * second);
    elapsed += interval;
    EXPECT_NEAR(run.now().conductor.celsius(), 25.0 + 50.0 * (1.0 - std::exp(-elapsed / 20.0)), 0.02) << elapsed;
  }
}

TEST(LadderRun, CoolsBackToTheAir) {
  LadderRun run(oneNode(), celsius(25));
  run.advance(5.0 * ampere, 100.0 * second);
  run.advance(0.0 * ampere, 20.0 * second);
  EXPECT_NEAR(run.now().conductor.celsius(), 25.0 + 50.0 * std::exp(-1.0), 0.4);
  run.advance(0.0 * ampere, 1000.0 * second);
  EXPECT_NEAR(run.now().conductor.celsius(), 25.0, 0.01);
}

TEST(LadderRun, FindsTheMomentOfALimitOnce) {
  LadderRun run(oneNode(), celsius(25));
  const auto time = run.advanceUntil(5.0 * ampere, 100.0 * second, celsius(50));
  ASSERT_TRUE(time.has_value());
  EXPECT_NEAR(time->si(), 20.0 * std::log(2.0), 0.05);
  EXPECT_EQ(run.advanceUntil(5.0 * ampere, 100.0 * second, celsius(50)), 0.0 * second);
  EXPECT_FALSE(run.advanceUntil(5.0 * ampere, 1000.0 * second, celsius(80)).has_value());
}

TEST(LadderRun, StopsAtTheModelsEdge) {
  CordLadder ladder = oneNode();
  ladder.alphaPerK = 0.00393;
  LadderRun run(ladder, celsius(25));
  run.advance(30.0 * ampere, 1000.0 * second);
  EXPECT_TRUE(run.beyondModel());
  EXPECT_NEAR(run.now().conductor.celsius(), 300.0, 1e-6);
  run.advance(0.0 * ampere, 1000.0 * second);
  EXPECT_TRUE(run.beyondModel());
}

TEST(SteadyState, OfAFixedWayOutIsTheClosedForm) {
  CordLadder ladder = oneNode();
  ladder.alphaPerK = 0.00393;
  ladder.resistance2s = 1.0;
  const double a = 9.0 * 3.0;  // I^2 R20 times K m/W
  const double expected = (25.0 + a * (1.0 - 20.0 * 0.00393)) / (1.0 - a * 0.00393);
  const auto end = steadyOf(ladder, 3.0 * ampere, celsius(25));
  ASSERT_TRUE(end.has_value());
  EXPECT_NEAR(end->conductor.celsius(), expected, 0.001);
}

TEST(SteadyState, IsNoneWhenResistanceOutrunsTheLoss) {
  CordLadder ladder = oneNode();
  ladder.alphaPerK = 0.00393;
  const double runawayA = std::sqrt(1.0 / (2.0 * 0.00393));
  EXPECT_FALSE(steadyOf(ladder, 1.001 * runawayA * ampere, celsius(25)).has_value());
  EXPECT_FALSE(steadyOf(ladder, 0.99 * runawayA * ampere, celsius(25)).has_value()) << "over 300 C";
  EXPECT_TRUE(steadyOf(ladder, 0.5 * runawayA * ampere, celsius(25)).has_value());
}

TEST(SteadyState, WithoutCurrentIsTheAir) {
  const auto end = steadyOf(oneNode(), 0.0 * ampere, celsius(31));
  ASSERT_TRUE(end.has_value());
  EXPECT_NEAR(end->conductor.celsius(), 31.0, 1e-9);
}

}  // namespace
}  // namespace cordreach::physics
