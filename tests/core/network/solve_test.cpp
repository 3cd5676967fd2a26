// SPDX-License-Identifier: GPL-3.0-or-later
// Tiny networks with answers worked out by hand.
#include "network/solve.h"

#include <gtest/gtest.h>

#include <atomic>
#include <memory>
#include <numbers>

#include "support/network_builder.h"

namespace cordreach {
namespace {

using network::EndReason;
using network::Phasor;
using testing::addLoad;
using testing::chain;
using testing::fixedCurrent;
using testing::impedanceOhm;
using testing::oneCircuit;

void expectPhasor(Phasor actual, Phasor expected, double tolerance = 1e-9) {
  EXPECT_NEAR(actual.real(), expected.real(), tolerance);
  EXPECT_NEAR(actual.imag(), expected.imag(), tolerance);
}

TEST(Solve, DividesTheVoltageBetweenWireAndLoad) {
  network::Circuit circuit = chain({0}, {{0.5, 0.5}});
  addLoad(circuit, 0, impedanceOhm(11.0));
  const auto solution = solve(oneCircuit({120.0}, circuit));
  EXPECT_EQ(solution.summary.end, EndReason::Converged);
  expectPhasor(solution.circuits[0].nodeV[0][0], 110.0);
  expectPhasor(solution.circuits[0].loads[0].currentA, 10.0);
  EXPECT_NEAR(solution.circuits[0].branches[0].poleRmsA[0], 10.0, 1e-9);
  EXPECT_NEAR(solution.circuits[0].branches[0].neutralRmsA, 10.0, 1e-9);
}

TEST(Solve, NeedsOneStepForImpedancesAlone) {
  network::Circuit circuit = chain({0}, {{0.5, 0.5}, {0.25, 0.25}});
  addLoad(circuit, 0, impedanceOhm(11.0));
  addLoad(circuit, 1, impedanceOhm(Phasor{9, 3}));
  const auto solution = solve(oneCircuit({120.0}, circuit));
  EXPECT_EQ(solution.summary.steps, 1U);
  EXPECT_LT(solution.summary.residualA, 1e-12);
}

// 0.1 S at the source's volts and some below them, a constant 11.5 A under 115 V.
class FlatAtNoLoad : public physics::LoadLaw {
 public:
  [[nodiscard]] physics::LoadPoint at(double voltageV) const override {
    physics::LoadPoint point;
    point.admittanceS = voltageV >= 115 ? 0.1 : 11.5 / voltageV;
    if (voltageV < 115) point.admittanceSlopeSPerV = -11.5 / (voltageV * voltageV);
    return point;
  }
};

TEST(Solve, GoesOnWhereALawThatIsFlatAtNoLoadBends) {
  network::Circuit circuit = chain({0}, {{0.5, 0.5}});
  addLoad(circuit, 0, std::make_shared<FlatAtNoLoad>());
  const auto solution = solve(oneCircuit({120.0}, circuit));
  EXPECT_EQ(solution.summary.end, EndReason::Converged);
  expectPhasor(solution.circuits[0].nodeV[0][0], 108.5);
}

TEST(Solve, CarriesReactanceAsPhasors) {
  network::Circuit circuit = chain({0}, {{Phasor{1, 2}, Phasor{0, 1}}});
  addLoad(circuit, 0, impedanceOhm(Phasor{5, 1}));
  const auto solution = solve(oneCircuit({120.0}, circuit));
  expectPhasor(solution.circuits[0].loads[0].currentA, 120.0 / Phasor{6, 4});
}

TEST(Solve, LeavesAnEmptyCircuitAtTheSource) {
  const auto solution = solve(oneCircuit({Phasor{0, 120}}, chain({0}, {{1, 1}, {1, 1}})));
  EXPECT_EQ(solution.summary.end, EndReason::Converged);
  expectPhasor(solution.circuits[0].nodeV[1][0], Phasor{0, 120});
  EXPECT_EQ(solution.circuits[0].branches[1].poleRmsA[0], 0.0);
}

TEST(Solve, SolvesAConstantPowerByItsQuadratic) {
  // V² - 120 V + P R = 0 with P = 1000 W, R = 1 ohm: V = 60 + sqrt(3600 - 1000).
  network::Circuit circuit = chain({0}, {{0.5, 0.5}});
  addLoad(circuit, 0, testing::constantPower(1000, 120, 30));
  const auto solution = solve(oneCircuit({120.0}, circuit));
  EXPECT_EQ(solution.summary.end, EndReason::Converged);
  expectPhasor(solution.circuits[0].nodeV[0][0], 60.0 + std::sqrt(2600.0));
}

TEST(Solve, FallsToTheLowVoltageImpedanceWhenNoHigherAnswerExists) {
  // 5 kW through 1 ohm has no answer (at most 3.6 kW); below 40 V the load is 40²/5000 = 0.32 ohm: V = 120 0.32/1.32.
  network::Circuit circuit = chain({0}, {{0.5, 0.5}});
  addLoad(circuit, 0, testing::constantPower(5000, 120, 40));
  const auto solution = solve(oneCircuit({120.0}, circuit));
  EXPECT_EQ(solution.summary.end, EndReason::Converged);
  expectPhasor(solution.circuits[0].nodeV[0][0], 120.0 * 0.32 / 1.32);
}

TEST(Solve, SharesANeutralBetweenTwoLegs) {
  // 20 A and 10 A on the legs, 0.1 ohm everywhere: 10 A back through the neutral lifts one leg and lowers the other.
  network::Circuit circuit = chain({0, 1}, {{0.1, 0.1}});
  addLoad(circuit, 0, fixedCurrent(20), 0);
  addLoad(circuit, 0, fixedCurrent(10), 1);
  const auto solution = solve(oneCircuit({120.0, -120.0}, circuit));
  expectPhasor(solution.circuits[0].nodeV[0][0], 120.0 - 2.0 - 1.0);
  expectPhasor(solution.circuits[0].nodeV[0][1], -(120.0 - 1.0 + 1.0));
  EXPECT_NEAR(solution.circuits[0].branches[0].neutralRmsA, 10.0, 1e-9);
}

TEST(Solve, DrawsNothingThroughTheNeutralBetweenPoles) {
  network::Circuit circuit = chain({0, 1}, {{0.5, 3.0}});
  addLoad(circuit, 0, impedanceOhm(23.0), 0, 1);
  const auto solution = solve(oneCircuit({120.0, -120.0}, circuit));
  expectPhasor(solution.circuits[0].loads[0].currentA, 10.0);
  expectPhasor(solution.circuits[0].loads[0].voltageV, 230.0);
  EXPECT_NEAR(solution.circuits[0].branches[0].neutralRmsA, 0.0, 1e-9);
  EXPECT_NEAR(solution.circuits[0].branches[0].poleRmsA[1], 10.0, 1e-9);
}

TEST(Solve, DividesLineToLineVoltsBetweenLegsOfALostNeutral) {
  // 24 ohm on one leg, 6 on the other, the neutral open: 240 V over 30 ohm.
  network::Circuit circuit = chain({0, 1}, {{0.0, 1e9}});
  addLoad(circuit, 0, impedanceOhm(24.0), 0);
  addLoad(circuit, 0, impedanceOhm(6.0), 1);
  const auto solution = solve(oneCircuit({120.0, -120.0}, circuit));
  EXPECT_EQ(solution.summary.end, EndReason::Converged);
  expectPhasor(solution.circuits[0].nodeV[0][0], 192.0, 1e-4);
  expectPhasor(solution.circuits[0].nodeV[0][1], -48.0, 1e-4);
}

TEST(Solve, GivesNoVoltsBehindALostNeutralOfOnePole) {
  network::Circuit circuit = chain({0}, {{0.1, 1e9}});
  addLoad(circuit, 0, impedanceOhm(24.0));
  const auto solution = solve(oneCircuit({120.0}, circuit));
  EXPECT_NEAR(std::abs(solution.circuits[0].nodeV[0][0]), 0.0, 1e-5);
}

TEST(Solve, KeepsABalancedStarOffItsNeutral) {
  const double third = 2.0 * std::numbers::pi / 3.0;
  const std::vector<Phasor> source{120.0, std::polar(120.0, -third), std::polar(120.0, third)};
  network::Circuit circuit = chain({0, 1, 2}, {{1.0, 5.0}});
  for (std::size_t pole = 0; pole < 3; ++pole) addLoad(circuit, 0, impedanceOhm(11.0), pole);
  const auto solution = solve(oneCircuit(source, circuit));
  for (std::size_t pole = 0; pole < 3; ++pole)
    expectPhasor(solution.circuits[0].nodeV[0][pole], source[pole] * 11.0 / 12.0);
  EXPECT_NEAR(solution.circuits[0].branches[0].neutralRmsA, 0.0, 1e-9);
}

TEST(Solve, AddsCircuitsAtTheirBusAndPanelsAtTheirFeeder) {
  network::Network building;
  building.panels.push_back(testing::sourcePanel({120.0, -120.0}, {0.1, 0.0}));
  network::Panel sub = testing::sourcePanel({}, {0.2, 0.0});
  sub.fedFrom = 0;
  sub.feedPhases = {1};
  building.panels.push_back(sub);
  for (const std::size_t panel : {0, 1}) {
    network::Circuit circuit = chain({panel == 0 ? 1u : 0u}, {{0.5, 0.0}});
    circuit.panel = panel;
    addLoad(circuit, 0, fixedCurrent(10));
    building.circuits.push_back(circuit);
  }
  const auto solution = solve(building);
  expectPhasor(solution.panelV[0][0], 120.0);
  expectPhasor(solution.panelV[0][1], -118.0);
  expectPhasor(solution.panelV[1][0], -116.0);
  expectPhasor(solution.circuits[0].nodeV[0][0], -113.0);
  expectPhasor(solution.circuits[1].nodeV[0][0], -111.0);
}

TEST(Solve, BranchesATree) {
  // Two spurs from node 0: 10 A and 5 A beyond a shared 0.2 ohm loop.
  network::Circuit circuit = chain({0}, {{0.1, 0.1}, {0.2, 0.2}, {0.4, 0.4}});
  circuit.nodes[2].parent = 0;
  addLoad(circuit, 2, fixedCurrent(5));
  addLoad(circuit, 1, fixedCurrent(10));
  const auto solution = solve(oneCircuit({120.0}, circuit));
  expectPhasor(solution.circuits[0].nodeV[1][0], 120.0 - 3.0 - 4.0);
  expectPhasor(solution.circuits[0].nodeV[2][0], 120.0 - 3.0 - 4.0);
  EXPECT_NEAR(std::abs(solution.circuits[0].loads[0].currentA), 5.0, 1e-12);
}

TEST(Solve, EndsWhenAsked) {
  network::Circuit circuit = chain({0}, {{0.5, 0.5}});
  addLoad(circuit, 0, impedanceOhm(11.0));
  std::atomic<bool> stop{true};
  network::SolveOptions options;
  options.progress.stop = &stop;
  EXPECT_EQ(solve(oneCircuit({120.0}, circuit), options).summary.end, EndReason::Stopped);
}

TEST(Solve, NamesTheWorstNodeWhenItMayNotFinish) {
  network::Circuit circuit = chain({0}, {{0.5, 0.5}, {0.5, 0.5}});
  addLoad(circuit, 1, std::make_shared<testing::ExponentLaw>(3.0, 120.0, 1.6, 0.01));
  network::SolveOptions options;
  options.maxSteps = 1;
  options.toleranceV = 0;
  const auto solution = solve(oneCircuit({120.0}, circuit), options);
  EXPECT_EQ(solution.summary.end, EndReason::StepLimit);
  EXPECT_EQ(solution.summary.worstPart, "node 1");
  EXPECT_GT(solution.summary.residualA, 0.0);
}

TEST(Solve, ReportsProgressToTheEnd) {
  network::Circuit circuit = chain({0}, {{0.5, 0.5}});
  addLoad(circuit, 0, testing::constantPower(1000, 120, 30));
  std::vector<double> reported;
  network::SolveOptions options;
  options.progress.report = [&](double fraction) { reported.push_back(fraction); };
  static_cast<void>(solve(oneCircuit({120.0}, circuit), options));
  ASSERT_FALSE(reported.empty());
  EXPECT_EQ(reported.back(), 1.0);
  EXPECT_TRUE(std::is_sorted(reported.begin(), reported.end()));
}

}  // namespace
}  // namespace cordreach
