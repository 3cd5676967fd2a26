// SPDX-License-Identifier: GPL-3.0-or-later
// How harmonics of several loads meet in branches and neutrals.
#include <gtest/gtest.h>

#include <numbers>

#include "network/solve.h"
#include "network/wiring_system.h"
#include "support/network_builder.h"

namespace cordreach {
namespace {

using testing::addLoad;
using testing::chain;

testing::Law distorted(double distortionA, double thirdA) {
  return std::make_shared<testing::DistortedLaw>(
      testing::DistortedLaw::Figures{10.0 / 120.0, distortionA, thirdA, std::numbers::pi});
}

network::BranchCurrents oneEach(const std::vector<network::Phasor>& sourceV, double distortionA, double thirdA) {
  std::vector<std::size_t> phases;
  for (std::size_t i = 0; i < sourceV.size(); ++i) phases.push_back(i);
  network::Circuit circuit = chain(phases, {{0.0, 0.0}, {0.0, 0.0}});
  for (const std::size_t pole : phases) addLoad(circuit, 1, distorted(distortionA, thirdA), pole);
  return solve(testing::oneCircuit(sourceV, circuit)).circuits[0].branches[0];
}

TEST(Distortion, AddsToTheRmsOfAPole) {
  const auto branch = oneEach({120.0}, 7.5, 0.0);
  EXPECT_NEAR(branch.poleRmsA[0], 12.5, 1e-9);
  EXPECT_NEAR(branch.neutralRmsA, 12.5, 1e-9);
}

TEST(Distortion, AddsThirdHarmonicsInTheNeutralOfAStar) {
  const auto branch = oneEach(network::utility208Y().sourceV, 6.0, 6.0);
  EXPECT_NEAR(branch.poleRmsA[1], std::sqrt(136.0), 1e-9);
  EXPECT_NEAR(branch.neutralRmsA, 18.0, 1e-9);
}

TEST(Distortion, CancelsThirdHarmonicsOnASplitPhase) {
  const auto branch = oneEach(network::utilitySplitPhase().sourceV, 6.0, 6.0);
  EXPECT_NEAR(branch.poleRmsA[1], std::sqrt(136.0), 1e-9);
  EXPECT_NEAR(branch.neutralRmsA, 0.0, 1e-9);
}

TEST(Distortion, AddsOtherHarmonicsOfOnePoleArithmetically) {
  network::Circuit circuit = chain({0}, {{0.0, 0.0}});
  for (int i = 0; i < 2; ++i) addLoad(circuit, 0, distorted(5.0, 3.0));
  const auto solution = solve(testing::oneCircuit({120.0}, circuit));
  EXPECT_NEAR(solution.circuits[0].branches[0].poleRmsA[0], std::sqrt(400.0 + 36.0 + 64.0), 1e-9);
  EXPECT_NEAR(solution.circuits[0].loads[0].totalRmsA, std::sqrt(125.0), 1e-9);
}

TEST(Distortion, TakesOtherHarmonicsOfPolesAsUnrelatedInTheNeutral) {
  const auto branch = oneEach(network::utilitySplitPhase().sourceV, 4.0, 0.0);
  EXPECT_NEAR(branch.neutralRmsA, std::sqrt(32.0), 1e-9);
}

TEST(Distortion, KeepsALoadBetweenPolesOutOfTheNeutral) {
  network::Circuit circuit = chain({0, 1}, {{0.0, 0.0}});
  addLoad(circuit, 0, distorted(5.0, 4.0), 0, 1);
  const auto branch = solve(testing::oneCircuit({120.0, -120.0}, circuit)).circuits[0].branches[0];
  EXPECT_NEAR(branch.neutralRmsA, 0.0, 1e-12);
  EXPECT_NEAR(branch.poleRmsA[0], std::sqrt(425.0), 1e-9);
  EXPECT_NEAR(branch.poleRmsA[1], std::sqrt(425.0), 1e-9);
}

}  // namespace
}  // namespace cordreach
