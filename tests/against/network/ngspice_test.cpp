// SPDX-License-Identifier: GPL-3.0-or-later
// Side by side with ngspice on random buildings of all wiring systems, run afresh each time. It needs ngspice on the
// path and fails without it.
#include <gtest/gtest.h>

#include <set>

#include "against/network/spice.h"
#include "support/random_building.h"

namespace cordreach {
namespace {

constexpr std::size_t kBuildings = 200;
constexpr double kTolerance = 1e-6;  // of the source's volts

using Answers = std::map<std::string, std::complex<double>>;

double worstOff(const Answers& answers, std::size_t building, const network::Network& network,
                const network::Solution& solution) {
  double worst = 0;
  const auto compare = [&](const std::string& pole, const std::string& neutral, network::Phasor ours, double scaleV) {
    ASSERT_TRUE(answers.contains(pole) && answers.contains(neutral)) << pole;
    worst = std::max(worst, std::abs(answers.at(pole) - answers.at(neutral) - ours) / scaleV);
  };
  const double scaleV = std::abs(network.panels[0].sourceV[0]);
  for (std::size_t p = 0; p < network.panels.size(); ++p) {
    for (std::size_t i = 0; i < solution.panelV[p].size(); ++i) {
      compare(testing::spiceBus(building, p, i), testing::spiceBusNeutral(building, p), solution.panelV[p][i], scaleV);
    }
  }
  for (std::size_t c = 0; c < network.circuits.size(); ++c) {
    for (std::size_t n = 0; n < network.circuits[c].nodes.size(); ++n) {
      for (std::size_t p = 0; p < network.circuits[c].phases.size(); ++p) {
        compare(testing::spicePole(building, c, n, p), testing::spiceNeutral(building, c, n),
                solution.circuits[c].nodeV[n][p], scaleV);
      }
    }
  }
  return worst;
}

struct Counted {
  std::size_t stalled = 0;
  std::set<std::size_t> sourcePhases;
};

Counted compareAll(const testing::BuildingMix& mix, std::uint64_t firstSeed) {
  testing::Netlist netlist;
  std::vector<network::Network> buildings;
  std::vector<network::Solution> solutions;
  Counted counted;
  for (std::size_t i = 0; i < kBuildings; ++i) {
    buildings.push_back(testing::randomBuilding(firstSeed + i, mix));
    solutions.push_back(solve(buildings.back()));
    EXPECT_EQ(solutions.back().summary.end, network::EndReason::Converged);
    counted.stalled += solutions.back().summary.stalled.size();
    counted.sourcePhases.insert(buildings.back().panels[0].sourceV.size());
    netlist.add(i, buildings.back(), solutions.back());
  }
  const Answers answers = netlist.run();
  EXPECT_FALSE(answers.empty()) << "ngspice did not answer: is it installed?";
  if (answers.empty()) return counted;
  for (std::size_t i = 0; i < kBuildings; ++i) {
    EXPECT_LE(worstOff(answers, i, buildings[i], solutions[i]), kTolerance) << "building " << i;
  }
  return counted;
}

TEST(AgainstNgspice, AgreesOnLinearLoads) {
  testing::BuildingMix mix;
  mix.circuits = 2;
  mix.motors = false;
  mix.powers = false;
  const Counted counted = compareAll(mix, 1000);
  EXPECT_EQ(counted.sourcePhases, (std::set<std::size_t>{1, 2, 3}));
}

TEST(AgainstNgspice, AgreesOnTheImpedancesThatNonlinearLoadsWereSolvedAt) {
  testing::BuildingMix mix;
  mix.circuits = 3;
  EXPECT_GT(compareAll(mix, 5000).stalled, 0u);
}

}  // namespace
}  // namespace cordreach
