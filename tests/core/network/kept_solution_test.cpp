// SPDX-License-Identifier: GPL-3.0-or-later
// A circuit's part of a solution is its reader's own: it outlives the solution, the solves after it and the thread.
#include <gtest/gtest.h>

#include <thread>

#include "network/partial.h"
#include "support/network_builder.h"

namespace cordreach {
namespace {

network::Network burdened(double loadOhm) {
  network::Circuit circuit = testing::chain({0}, {{0.5, 0.5}, {1.0, 1.0}});
  testing::addLoad(circuit, 1, testing::impedanceOhm(loadOhm));
  testing::addLoad(circuit, 0, testing::impedanceOhm(2.0 * loadOhm));
  return testing::oneCircuit({120.0}, circuit);
}

double farV(const network::CircuitSolution& circuit) { return std::abs(circuit.nodeV[1][0]); }

TEST(KeptSolution, IsNotTouchedByLaterSolves) {
  network::CircuitSolution kept = solve(burdened(20.0)).circuits[0];
  const double thenV = farV(kept);
  const double thenA = kept.loads[0].totalRmsA;
  const double thenNeutralA = kept.branches[0].neutralRmsA;
  for (int i = 0; i < 10; ++i) static_cast<void>(solve(burdened(5.0)));
  EXPECT_EQ(farV(kept), thenV);
  EXPECT_EQ(kept.loads[0].totalRmsA, thenA);
  EXPECT_EQ(kept.branches[0].neutralRmsA, thenNeutralA);
}

TEST(KeptSolution, OutlivesTheThreadThatSolvedIt) {
  network::Solution fromThread;
  std::thread([&] { fromThread = solve(burdened(20.0)); }).join();
  EXPECT_EQ(farV(fromThread.circuits[0]), farV(solve(burdened(20.0)).circuits[0]));
}

TEST(KeptSolution, ASmallerSolveAfterALargerOneHoldsNothingOfIt) {
  static_cast<void>(solve(burdened(5.0)));
  network::Circuit bare = testing::chain({0}, {{0.5, 0.5}});
  const auto solution = solve(testing::oneCircuit({120.0}, bare));
  EXPECT_EQ(solution.circuits[0].nodeV.size(), 1u);
  EXPECT_EQ(solution.circuits[0].loads.size(), 0u);
  EXPECT_EQ(solution.circuits[0].branches[0].poleRmsA[0], 0.0);
  EXPECT_EQ(solution.circuits[0].branches[0].neutralRmsA, 0.0);
}

}  // namespace
}  // namespace cordreach
