// SPDX-License-Identifier: GPL-3.0-or-later
// Motors above, at and below their pull-out.
#include <gtest/gtest.h>

#include "network/solve.h"
#include "support/network_builder.h"

namespace cordreach {
namespace {

using network::EndReason;
using testing::addLoad;
using testing::chain;
using testing::motor;
using testing::oneCircuit;

network::Solution motorBehind(double loopOhm, const testing::PullOutLaw::Figures& figures = {}) {
  network::Circuit circuit = chain({0}, {{loopOhm / 2, loopOhm / 2}});
  addLoad(circuit, 0, motor(figures));
  return solve(oneCircuit({120.0}, circuit));
}

TEST(Stall, DoesNotTouchAMotorThatRuns) {
  const auto solution = motorBehind(1.5);
  EXPECT_EQ(solution.summary.end, EndReason::Converged);
  EXPECT_TRUE(solution.summary.stalled.empty());
  EXPECT_EQ(solution.summary.passes, 1u);
  EXPECT_GT(std::abs(solution.circuits[0].loads[0].currentA), 12.0);
}

TEST(Stall, MarksAMotorWithNoRunningPoint) {
  const auto solution = motorBehind(4.0);
  EXPECT_EQ(solution.summary.end, EndReason::Converged);
  ASSERT_EQ(solution.summary.stalled, std::vector<std::string>{"load 0"});
  EXPECT_TRUE(solution.circuits[0].loads[0].stalled);
  EXPECT_EQ(solution.summary.passes, 2u);
  const network::Phasor locked = 70.0 / 115.0 * network::Phasor{0.6, -0.8};
  EXPECT_NEAR(std::abs(solution.circuits[0].nodeV[0][0]), std::abs(120.0 / (1.0 + 4.0 * locked)), 1e-8);
}

TEST(Stall, AgreesWithTheCurveOfTheMotorAtEveryImpedance) {
  // The source needed for terminal volts v is |v (1 + Z Y(v))|; a running point exists while its least value over
  // v >= pull-out is below 120 V.
  const testing::PullOutLaw::Figures figures;
  const testing::PullOutLaw law(figures);
  std::size_t running = 0;
  for (int step = 1; step <= 400; ++step) {
    const double loopOhm = 0.01 * step;
    double least = 1e9;
    for (double v = figures.pullOutV; v <= 120.0; v += 0.002) {
      least = std::min(least, std::abs(v * (1.0 + loopOhm * law.at(v).admittanceS)));
    }
    if (std::abs(least - 120.0) < 0.01) continue;
    const auto solution = motorBehind(loopOhm, figures);
    ASSERT_EQ(solution.summary.end, EndReason::Converged) << loopOhm;
    EXPECT_EQ(solution.summary.stalled.empty(), least < 120.0) << loopOhm;
    running += solution.summary.stalled.empty() ? 1 : 0;
  }
  EXPECT_GT(running, 50u);
  EXPECT_LT(running, 350u);
}

TEST(Stall, MarksTogetherMotorsThatAreAlike) {
  network::Circuit circuit = chain({0}, {{0.6, 0.6}});
  for (int i = 0; i < 4; ++i) addLoad(circuit, 0, motor({}));
  const auto solution = solve(oneCircuit({120.0}, circuit));
  EXPECT_EQ(solution.summary.end, EndReason::Converged);
  EXPECT_EQ(solution.summary.stalled.size(), 4u);
  EXPECT_EQ(solution.summary.passes, 2u);
}

TEST(Stall, LeavesTheStrongerMotorOnItsOwnCircuitRunning) {
  network::Network building{{testing::sourcePanel({120.0}, {0.03, 0.03})}, {}};
  for (const double loopOhm : {0.5, 3.0}) {
    network::Circuit circuit = chain({0}, {{loopOhm, 0.0}});
    addLoad(circuit, 0, motor({}));
    circuit.loads[0].label = loopOhm < 1 ? "near" : "far";
    building.circuits.push_back(circuit);
  }
  const auto solution = solve(building);
  EXPECT_EQ(solution.summary.end, EndReason::Converged);
  EXPECT_EQ(solution.summary.stalled, std::vector<std::string>{"far"});
  EXPECT_FALSE(solution.circuits[0].loads[0].stalled);
}

}  // namespace
}  // namespace cordreach
