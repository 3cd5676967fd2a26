// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold for every building, tried over many random ones.
#include <gtest/gtest.h>

#include <algorithm>

#include "network/power_balance.h"
#include "network/solve.h"
#include "support/random_building.h"

namespace cordreach {
namespace {

using network::EndReason;
using network::Phasor;
using testing::Dice;

TEST(EveryBuilding, EndsConverged) {
  for (std::uint64_t seed = 0; seed < 3000; ++seed) {
    const auto solution = solve(testing::randomBuilding(seed));
    ASSERT_EQ(solution.summary.end, EndReason::Converged) << "seed " << seed;
    ASSERT_LT(solution.summary.residualA, 1e-7) << "seed " << seed;
  }
}

TEST(EveryBuilding, TakesInWhatItsLoadsAndWiresUse) {
  for (std::uint64_t seed = 0; seed < 1000; ++seed) {
    const auto building = testing::randomBuilding(seed);
    const auto balance = powerBalance(building, solve(building));
    const double scaleVa = 1.0 + std::abs(balance.sourceVa);
    ASSERT_NEAR(std::abs(balance.sourceVa - balance.loadsVa - balance.branchesVa) / scaleVa, 0.0, 1e-9)
        << "seed " << seed;
  }
}

// Each load's law, asked again at the solved volts, gives the solved current, and each branch obeys Ohm.
TEST(EveryBuilding, ObeysItsLawsAndOhm) {
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    const auto building = testing::randomBuilding(seed);
    const auto solution = solve(building);
    for (std::size_t c = 0; c < building.circuits.size(); ++c) {
      const auto& circuit = building.circuits[c];
      const auto& solved = solution.circuits[c];
      std::vector<std::array<Phasor, 3>> current(circuit.nodes.size());
      for (std::size_t i = 0; i < circuit.loads.size(); ++i) {
        const auto& load = circuit.loads[i];
        const double size = std::abs(solved.loads[i].voltageV);
        const auto point = solved.loads[i].stalled ? load.law->stalledAt(size) : load.law->at(size);
        ASSERT_NEAR(std::abs(point.admittanceS * solved.loads[i].voltageV - solved.loads[i].currentA), 0.0, 1e-6);
        current[load.node][load.pole] += solved.loads[i].currentA;
        if (load.toPole) current[load.node][*load.toPole] -= solved.loads[i].currentA;
      }
      for (std::size_t n = circuit.nodes.size(); n-- > 0;) {
        const auto& node = circuit.nodes[n];
        const Phasor neutral = current[n][0] + current[n][1] + current[n][2];
        for (std::size_t p = 0; p < circuit.phases.size(); ++p) {
          const Phasor from = n == 0 ? solution.panelV[circuit.panel][circuit.phases[p]] : solved.nodeV[node.parent][p];
          const Phasor drop = node.branch.poleOhm * current[n][p] + node.branch.neutralOhm * neutral;
          ASSERT_NEAR(std::abs(from - drop - solved.nodeV[n][p]), 0.0, 1e-7) << "seed " << seed;
          if (n > 0) current[node.parent][p] += current[n][p];
        }
      }
    }
  }
}

TEST(EveryBuilding, DoesNotDependOnTheOrderOfItsParts) {
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    const auto building = testing::randomBuilding(seed);
    auto turned = building;
    std::reverse(turned.circuits.begin(), turned.circuits.end());
    for (auto& circuit : turned.circuits) std::reverse(circuit.loads.begin(), circuit.loads.end());
    const auto one = solve(building);
    const auto other = solve(turned);
    const std::size_t count = building.circuits.size();
    for (std::size_t c = 0; c < count; ++c) {
      const auto& loads = one.circuits[c].loads;
      for (std::size_t i = 0; i < loads.size(); ++i) {
        const auto& same = other.circuits[count - 1 - c].loads[loads.size() - 1 - i];
        ASSERT_NEAR(std::abs(loads[i].voltageV - same.voltageV), 0.0, 1e-7) << "seed " << seed;
        ASSERT_EQ(loads[i].stalled, same.stalled) << "seed " << seed;
      }
    }
  }
}

TEST(EveryBuilding, DoesNotDependOnTheOrderOfPanelsWithoutCommonFeed) {
  for (std::uint64_t seed = 0; seed < 100; ++seed) {
    auto building = testing::randomBuilding(2 * seed);
    const auto second = testing::randomBuilding(2 * seed + 1);
    const auto join = [](network::Network first, network::Network then) {
      const std::size_t shift = first.panels.size();
      for (auto& panel : then.panels) {
        if (panel.fedFrom) *panel.fedFrom += shift;
        first.panels.push_back(panel);
      }
      for (auto& circuit : then.circuits) {
        circuit.panel += shift;
        first.circuits.push_back(circuit);
      }
      return first;
    };
    const auto forth = solve(join(building, second));
    const auto back = solve(join(second, building));
    const auto alone = solve(building);
    ASSERT_EQ(forth.summary.stalled.size(), back.summary.stalled.size());
    for (std::size_t p = 0; p < building.panels.size(); ++p) {
      for (std::size_t i = 0; i < alone.panelV[p].size(); ++i) {
        ASSERT_NEAR(std::abs(forth.panelV[p][i] - back.panelV[second.panels.size() + p][i]), 0.0, 1e-7);
        ASSERT_NEAR(std::abs(forth.panelV[p][i] - alone.panelV[p][i]), 0.0, 1e-7) << "seed " << seed;
      }
    }
  }
}

// Lagging or unity loads on one single-phase circuit; no motor changes its state.
network::Circuit laggingCircuit(Dice& dice) {
  testing::BuildingMix mix;
  mix.nodesPerCircuit = 10;
  auto circuit = testing::randomCircuit(dice, 0, {120.0}, mix);
  testing::addLoad(circuit, circuit.nodes.size() - 1, testing::impedanceOhm({12.0, 2.0}));
  return circuit;
}

// Upstream of it, a longer branch may even help: behind it the loads draw less.
TEST(OneCircuit, NeverDropsLessBeyondABranchThatIsLonger) {
  for (std::uint64_t seed = 0; seed < 1000; ++seed) {
    Dice dice(seed);
    auto circuit = laggingCircuit(dice);
    const std::size_t changed = dice.below(circuit.nodes.size());
    const auto shorter = solve(testing::oneCircuit({120.0}, circuit));
    circuit.nodes[changed].branch.poleOhm *= 1.3;
    circuit.nodes[changed].branch.neutralOhm *= 1.3;
    const auto longer = solve(testing::oneCircuit({120.0}, circuit));
    if (shorter.summary.stalled != longer.summary.stalled) continue;
    std::vector<bool> beyond(circuit.nodes.size(), false);
    beyond[changed] = true;
    for (std::size_t n = changed; n < circuit.nodes.size(); ++n) {
      if (n > changed) beyond[n] = beyond[circuit.nodes[n].parent];
      if (!beyond[n]) continue;
      ASSERT_LE(std::abs(longer.circuits[0].nodeV[n][0]), std::abs(shorter.circuits[0].nodeV[n][0]) + 1e-7)
          << "seed " << seed << " node " << n;
    }
  }
}

TEST(OneCircuit, NeverLosesVoltsWhenALoadIsSwitchedOff) {
  for (std::uint64_t seed = 0; seed < 1000; ++seed) {
    Dice dice(seed);
    auto circuit = laggingCircuit(dice);
    const auto on = solve(testing::oneCircuit({120.0}, circuit));
    circuit.loads.erase(circuit.loads.begin() + static_cast<std::ptrdiff_t>(dice.below(circuit.loads.size())));
    const auto off = solve(testing::oneCircuit({120.0}, circuit));
    if (!on.summary.stalled.empty() || !off.summary.stalled.empty()) continue;
    for (std::size_t n = 0; n < circuit.nodes.size(); ++n) {
      ASSERT_GE(std::abs(off.circuits[0].nodeV[n][0]), std::abs(on.circuits[0].nodeV[n][0]) - 1e-7) << "seed " << seed;
    }
  }
}

TEST(LostNeutral, SharesTheLineToLineVoltsBetweenItsLegs) {
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    Dice dice(seed);
    const Phasor first{dice.between(5, 200), dice.between(0, 50)};
    const Phasor second{dice.between(5, 200), dice.between(0, 50)};
    auto circuit = testing::chain({0, 1}, {{0.1, 1e9}});
    testing::addLoad(circuit, 0, testing::impedanceOhm(first), 0);
    testing::addLoad(circuit, 0, testing::impedanceOhm(second), 1);
    const auto solution = solve(testing::oneCircuit({120.0, -120.0}, circuit));
    const Phasor current = 240.0 / (0.2 + first + second);
    ASSERT_EQ(solution.summary.end, EndReason::Converged);
    ASSERT_NEAR(std::abs(solution.circuits[0].nodeV[0][0] - current * first), 0.0, 1e-4);
    ASSERT_NEAR(std::abs(solution.circuits[0].nodeV[0][1] + current * second), 0.0, 1e-4);
  }
}

}  // namespace
}  // namespace cordreach
