// SPDX-License-Identifier: GPL-3.0-or-later
// A network of plain impedances is swept once; asked through laws that hide that they are plain, the same network goes
// through Newton's method, which must arrive at the same volts and amps.
#include <gtest/gtest.h>

#include <atomic>
#include <cmath>
#include <memory>

#include "network/partial.h"
#include "network/solve.h"
#include "support/random_building.h"

namespace cordreach {
namespace {

class Hiding final : public physics::LoadLaw {
 public:
  explicit Hiding(testing::Law law) : m_law(std::move(law)) {}
  [[nodiscard]] physics::LoadPoint at(double voltageV) const override { return m_law->at(voltageV); }

 private:
  testing::Law m_law;
};

network::Network hidden(network::Network building) {
  for (network::Circuit& circuit : building.circuits) {
    for (network::Load& load : circuit.loads) load.law = std::make_shared<Hiding>(load.law);
  }
  return building;
}

// Circuits of one pole each.
network::Network impedances(std::uint64_t seed) {
  network::Network building = testing::randomBuilding(seed, {.circuits = 12, .motors = false, .powers = false});
  std::erase_if(building.circuits, [](const network::Circuit& circuit) { return circuit.phases.size() > 1; });
  return building;
}

// All differences added up, so that one that is no number is not lost.
double apart(const network::CircuitSolution& x, const network::CircuitSolution& y) {
  double sum = 0;
  for (std::size_t n = 0; n < x.nodeV.size(); ++n) {
    sum += std::abs(x.nodeV[n][0] - y.nodeV[n][0]);
    sum += std::abs(x.branches[n].poleRmsA[0] - y.branches[n].poleRmsA[0]);
  }
  for (std::size_t k = 0; k < x.loads.size(); ++k) {
    sum += std::abs(x.loads[k].voltageV - y.loads[k].voltageV);
    sum += std::abs(x.loads[k].currentA - y.loads[k].currentA);
  }
  return sum;
}

TEST(LinearSweepTest, ArrivesWhereNewtonsMethodDoes) {
  std::size_t circuits = 0;
  for (std::uint64_t seed = 1; seed <= 200; ++seed) {
    const network::Network building = impedances(seed);
    const network::Solution swept = solve(building);
    const network::Solution stepped = solve(hidden(building));
    ASSERT_EQ(swept.summary.end, network::EndReason::Converged) << seed;
    EXPECT_LT(swept.summary.residualA, 1e-9) << seed;
    for (std::size_t c = 0; c < building.circuits.size(); ++c, ++circuits) {
      ASSERT_LT(apart(swept.circuits[c], stepped.circuits[c]), 1e-9) << "seed " << seed << ", circuit " << c;
    }
    for (std::size_t p = 0; p < building.panels.size(); ++p) {
      for (std::size_t i = 0; i < swept.panelV[p].size(); ++i) {
        EXPECT_LT(std::abs(swept.panelV[p][i] - stepped.panelV[p][i]), 1e-9) << seed;
      }
    }
  }
  EXPECT_GT(circuits, 1000U);
}

TEST(LinearSweepTest, SaysThatItTookOneStepWithNothingLeftToChange) {
  const network::Summary summary = solve(impedances(3)).summary;
  EXPECT_EQ(summary.steps, 1U);
  EXPECT_EQ(summary.passes, 1U);
  EXPECT_EQ(summary.lastChangeV, 0.0);
}

TEST(LinearSweepTest, AShortCircuitAtTheEndGivesVoltsOverTheLoop) {
  network::Network building;
  building.panels.push_back(testing::sourcePanel({120.0}, {0.05, 0.05}));
  network::Circuit circuit = testing::chain({0}, {{0.1, 0.1}, {0.2, 0.2}});
  testing::addLoad(circuit, 1, testing::impedanceOhm(1e-9));
  building.circuits.push_back(circuit);
  const network::Solution solution = solve(building);
  EXPECT_NEAR(std::abs(solution.circuits[0].loads[0].currentA), 120.0 / 0.7, 1e-5);
}

TEST(LinearSweepTest, ACancelledOneSaysThatItStopped) {
  const std::atomic<bool> stop = true;
  network::SolveOptions options;
  options.progress.stop = &stop;
  EXPECT_EQ(solve(impedances(3), options).summary.end, network::EndReason::Stopped);
}

}  // namespace
}  // namespace cordreach
