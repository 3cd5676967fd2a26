// SPDX-License-Identifier: GPL-3.0-or-later
// A part solved alone equals that part of the whole.
#include "network/partial.h"

#include <gtest/gtest.h>

#include "support/network_builder.h"

namespace cordreach {
namespace {

using testing::addLoad;
using testing::chain;

network::Network building() {
  network::Network made;
  made.panels.push_back(testing::sourcePanel({120.0, -120.0}, {0.03, 0.03}));
  network::Panel sub = testing::sourcePanel({}, {0.05, 0.05});
  sub.fedFrom = 0;
  sub.feedPhases = {1, 0};
  made.panels.push_back(sub);
  for (std::size_t i = 0; i < 6; ++i) {
    const bool both = i % 3 == 2;
    network::Circuit circuit =
        chain(both ? std::vector<std::size_t>{1, 0} : std::vector<std::size_t>{i % 2}, {{0.1, 0.1}, {0.3, 0.3}});
    circuit.panel = i < 2 ? 0 : 1;
    addLoad(circuit, 1, testing::motor({}));
    if (both) addLoad(circuit, 0, testing::constantPower(900, 240, 150), 0, 1);
    made.circuits.push_back(circuit);
  }
  return made;
}

TEST(SolveCircuit, EqualsItsPartOfTheWhole) {
  const network::Network whole = building();
  const auto solution = solve(whole);
  for (std::size_t c = 0; c < whole.circuits.size(); ++c) {
    const network::Circuit& circuit = whole.circuits[c];
    std::vector<network::Phasor> busV;
    for (const std::size_t phase : circuit.phases) busV.push_back(solution.panelV[circuit.panel][phase]);
    const auto alone = solveCircuit(circuit, busV);
    EXPECT_EQ(alone.summary.end, network::EndReason::Converged);
    for (std::size_t n = 0; n < circuit.nodes.size(); ++n) {
      for (std::size_t p = 0; p < circuit.phases.size(); ++p) {
        EXPECT_NEAR(std::abs(alone.circuit.nodeV[n][p] - solution.circuits[c].nodeV[n][p]), 0.0, 1e-8);
      }
    }
  }
}

TEST(SolvePanel, EqualsItsPartOfTheWhole) {
  const network::Network whole = building();
  const auto solution = solve(whole);
  for (const std::size_t panel : {0u, 1u}) {
    const auto alone = solvePanel(whole, panel, feedingVoltages(whole, panel, solution));
    EXPECT_EQ(alone.panels.size(), panel == 0 ? 2u : 1u);
    EXPECT_EQ(alone.circuits.size(), panel == 0 ? 6u : 4u);
    for (std::size_t i = 0; i < alone.panels.size(); ++i) {
      for (std::size_t phase = 0; phase < 2; ++phase) {
        EXPECT_NEAR(std::abs(alone.panelV[i][phase] - solution.panelV[alone.panels[i]][phase]), 0.0, 1e-8);
      }
    }
    for (std::size_t i = 0; i < alone.circuits.size(); ++i) {
      const auto& inWhole = solution.circuits[alone.circuitIndices[i]];
      EXPECT_NEAR(std::abs(alone.circuits[i].loads[0].currentA - inWhole.loads[0].currentA), 0.0, 1e-8);
    }
  }
}

}  // namespace
}  // namespace cordreach
