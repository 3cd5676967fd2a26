// SPDX-License-Identifier: GPL-3.0-or-later
// The program's own load laws on random circuits, from easy to hopeless.
#include <gtest/gtest.h>

#include "network/power_balance.h"
#include "physics/load_nameplate.h"
#include "support/random_building.h"

namespace cordreach {
namespace {

using physics::LoadModel;
using units::ampere;
using units::volt;

testing::Law ownLaw(testing::Dice& dice) {
  constexpr LoadModel kModels[] = {LoadModel::Induction,           LoadModel::InductionFan,    LoadModel::Universal,
                                   LoadModel::RectifiedDc,         LoadModel::ElectronicPlain, LoadModel::Resistance,
                                   LoadModel::ElectronicCorrected, LoadModel::Compressor};
  physics::Nameplate plate;
  plate.model = kModels[dice.below(std::size(kModels))];
  plate.voltage = 115.0 * volt;
  plate.current = dice.between(1.0, 15.0) * ampere;
  return physics::makeLoadLaw(plate).value();
}

network::Network ownBuilding(std::uint64_t seed) {
  testing::Dice dice(seed);
  network::Network building;
  const network::Supply supply = dice.chance(0.5) ? network::utilitySplitPhase() : network::utility208Y();
  building.panels.push_back(testing::sourcePanel(supply.sourceV, supply.source));
  for (std::size_t c = 0; c < 10; ++c) {
    const double worse = dice.between(0.5, 12.0);
    std::vector<network::Branch> branches;
    for (int n = 0; n < 3; ++n) {
      network::Branch branch = testing::randomBranch(dice);
      branches.push_back({worse * branch.poleOhm, worse * branch.neutralOhm});
    }
    auto circuit = testing::chain({c % supply.sourceV.size()}, branches);
    for (std::size_t n = 0; n < 3; ++n) testing::addLoad(circuit, n, ownLaw(dice));
    building.circuits.push_back(circuit);
  }
  return building;
}

TEST(OwnLoadLaws, EndConvergedInEveryBuilding) {
  std::size_t stalled = 0;
  std::size_t running = 0;
  for (std::uint64_t seed = 0; seed < 500; ++seed) {
    const auto building = ownBuilding(seed);
    const auto solution = solve(building);
    ASSERT_EQ(solution.summary.end, network::EndReason::Converged)
        << "seed " << seed << " at " << solution.summary.worstPart << ", " << solution.summary.residualA << " A";
    const auto balance = powerBalance(building, solution);
    ASSERT_NEAR(std::abs(balance.sourceVa - balance.loadsVa - balance.branchesVa), 0.0, 1e-5) << "seed " << seed;
    stalled += solution.summary.stalled.size();
    running += 30 - solution.summary.stalled.size();
  }
  EXPECT_GT(stalled, 100u);
  EXPECT_GT(running, 1000u);
}

}  // namespace
}  // namespace cordreach
