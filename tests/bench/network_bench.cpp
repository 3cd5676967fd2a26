// SPDX-License-Identifier: GPL-3.0-or-later
// How long the network takes: whole buildings of one nonlinear load an outlet, from scratch, and one circuit or panel.
// Conditions: 8 A a circuit at full load, 12 panels a building of 600 circuits, source drop 3 %, to 1e-6 V.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>
#include <ctime>
#include <limits>

#include "network/partial.h"
#include "support/network_builder.h"

namespace cordreach {
namespace {

constexpr std::size_t kOutletsPerCircuit = 17;
constexpr double kCircuitA = 8.0;
constexpr double kPullOutOfStalledV = 117.0;  // above what any outlet gets

std::size_t circuitsFor(std::size_t outlets) {
  return std::max<std::size_t>(1, (outlets + kOutletsPerCircuit - 1) / kOutletsPerCircuit);
}

testing::Law outletLaw(std::size_t outlet, std::size_t stalledEvery) {
  const double currentA = kCircuitA / static_cast<double>(kOutletsPerCircuit);
  if (stalledEvery > 0 && outlet % stalledEvery == 0) {
    return testing::motor({currentA, 115, kPullOutOfStalledV, 0.75, 5 * currentA});
  }
  if (outlet % 2 == 0) return testing::motor({currentA, 115, 80, 0.75, 5 * currentA});
  return std::make_shared<testing::ExponentLaw>(currentA, 115, 0.0, 60);
}

// One law object an outlet, as a real building has.
network::Network office(std::size_t outlets, std::size_t stalledEvery = 0) {
  const std::size_t circuits = circuitsFor(outlets);
  const std::size_t panels = std::max<std::size_t>(1, circuits / 50);
  network::Network building;
  for (std::size_t i = 0; i < panels; ++i) {
    const double perLegA = kCircuitA * static_cast<double>(circuits) / static_cast<double>(panels) / 2.0;
    building.panels.push_back(testing::sourcePanel({120.0, -120.0}, {0.03 * 120 / perLegA, 0.0}));
  }
  std::size_t outlet = 0;
  for (std::size_t c = 0; c < circuits; ++c) {
    std::vector<network::Branch> branches(kOutletsPerCircuit, {0.015, 0.015});
    branches[0] = {0.1, 0.1};
    network::Circuit circuit = testing::chain({(c / panels) % 2}, branches);
    circuit.panel = c % panels;
    for (std::size_t node = 0; node < kOutletsPerCircuit && outlet < outlets; ++node, ++outlet) {
      testing::addLoad(circuit, node, outletLaw(outlet, stalledEvery));
    }
    building.circuits.push_back(circuit);
  }
  return building;
}

network::SolveOptions toMicrovolt() {
  network::SolveOptions options;
  options.toleranceV = 1e-6;
  return options;
}

void report(benchmark::State& state, const network::Summary& summary) {
  if (summary.end != network::EndReason::Converged) state.SkipWithError("did not converge");
  state.counters["steps"] = static_cast<double>(summary.steps);
  state.counters["stalled"] = static_cast<double>(summary.stalled.size());
}

void wholeBuilding(benchmark::State& state) {
  const network::Network building = office(static_cast<std::size_t>(state.range(0)));
  network::Summary summary;
  for (auto _ : state) summary = solve(building, toMicrovolt()).summary;
  report(state, summary);
  state.counters["per_outlet"] = benchmark::Counter(
      static_cast<double>(state.range(0)), benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}

// Processor time, so that a busy machine does not decide; of many solves, as the clock is coarse.
double secondsFor(const network::Network& building, int solves) {
  double best = std::numeric_limits<double>::max();
  for (int attempt = 0; attempt < 5; ++attempt) {
    const std::clock_t start = std::clock();
    for (int i = 0; i < solves; ++i) benchmark::DoNotOptimize(solve(building, toMicrovolt()));
    best = std::min(best, static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC / solves);
  }
  return best;
}

// Cost ~ outlets^exponent; 1 is linear. What lies above comes from memory: beyond the caches, and fresh from the
// system.
void exponentFrom100To100000(benchmark::State& state) {
  const network::Network small = office(100);
  const network::Network large = office(100'000);
  for (auto _ : state) {
    state.counters["exponent"] = std::log10(secondsFor(large, 1) / secondsFor(small, 1000)) / 3.0;
  }
}

void twoPercentStalled(benchmark::State& state) {
  const network::Network building = office(static_cast<std::size_t>(state.range(0)), 50);
  network::Summary summary;
  for (auto _ : state) summary = solve(building, toMicrovolt()).summary;
  report(state, summary);
}

void oneCircuitWithItsBusHeld(benchmark::State& state) {
  const network::Network building = office(10'000);
  const std::vector<network::Phasor> busV{118.0};
  network::Summary summary;
  for (auto _ : state) summary = solveCircuit(building.circuits[0], busV, toMicrovolt()).summary;
  report(state, summary);
}

void onePanelToAMillivolt(benchmark::State& state) {
  const network::Network building = office(10'000);
  network::SolveOptions options;
  options.toleranceV = 1e-3;
  network::Summary summary;
  for (auto _ : state) summary = solvePanel(building, 0, building.panels[0].sourceV, options).summary;
  report(state, summary);
}

BENCHMARK(wholeBuilding)->RangeMultiplier(10)->Range(100, 100'000)->Unit(benchmark::kMillisecond);
BENCHMARK(exponentFrom100To100000)->Iterations(1)->Unit(benchmark::kMillisecond);
BENCHMARK(twoPercentStalled)->Arg(10'000)->Unit(benchmark::kMillisecond);
BENCHMARK(oneCircuitWithItsBusHeld)->Unit(benchmark::kMicrosecond);
BENCHMARK(onePanelToAMillivolt)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace cordreach

BENCHMARK_MAIN();
