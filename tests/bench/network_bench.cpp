// SPDX-License-Identifier: GPL-3.0-or-later
// How long the network takes: whole buildings of one nonlinear load an outlet, from scratch, and one circuit or panel.
// Conditions: 8 A a circuit at full load, 12 panels a building of 600 circuits, source drop 3 %, to 1e-6 V.
#include <benchmark/benchmark.h>
#include <klu.h>
#include <sys/resource.h>

#include <algorithm>
#include <cmath>
#include <ctime>
#include <limits>

#include "against/network/spice.h"
#include "bench/nodal.h"
#include "bench/office.h"
#include "network/detail/workspace.h"
#include "network/partial.h"

namespace cordreach {
namespace {

using bench::linearOffice;
using bench::office;

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

// The linear building: ours from its description to the volts, against a general sparse solver and a circuit program.
void linearBuilding(benchmark::State& state) {
  const network::Network building = linearOffice(static_cast<std::size_t>(state.range(0)));
  network::Summary summary;
  for (auto _ : state) summary = solve(building, toMicrovolt()).summary;
  report(state, summary);
}

// The same from the solver's own arrays, as the rival from its matrix: to the volts and what each load draws.
void linearBuildingFromArrays(benchmark::State& state) {
  const network::Network building = linearOffice(static_cast<std::size_t>(state.range(0)));
  network::detail::Workspace memory;
  network::detail::flatten(building, memory.flat());
  const network::SolveOptions options = toMicrovolt();
  for (auto _ : state) {
    network::detail::Newton newton(memory.flat(), options, memory.buffers());
    if (newton.run() != network::EndReason::Converged) state.SkipWithError("did not converge");
    benchmark::DoNotOptimize(newton.voltage().data());
  }
}

double worstOffV(const bench::Nodal& nodal, const std::vector<network::Phasor>& volts,
                 const network::Solution& solution) {
  double worst = 0;
  for (std::size_t c = 0; c < solution.circuits.size(); ++c) {
    for (std::size_t n = 0; n < solution.circuits[c].nodeV.size(); ++n) {
      const auto ends = nodal.at(c, n);
      const network::Phasor across =
          volts[static_cast<std::size_t>(ends.pole)] - volts[static_cast<std::size_t>(ends.neutral)];
      worst = std::max(worst, std::abs(across - solution.circuits[c].nodeV[n][0]));
    }
  }
  return worst;
}

// Analysis, factors and one solution.
std::vector<network::Phasor> solvedByKlu(bench::Nodal& nodal, klu_common& common) {
  std::vector<network::Phasor> volts = nodal.rightSide;
  klu_symbolic* symbolic = klu_analyze(nodal.size(), nodal.columnStart.data(), nodal.row.data(), &common);
  klu_numeric* numeric = klu_z_factor(nodal.columnStart.data(), nodal.row.data(),
                                      reinterpret_cast<double*>(nodal.value.data()), symbolic, &common);
  klu_z_solve(symbolic, numeric, nodal.size(), 1, reinterpret_cast<double*>(volts.data()), &common);
  klu_z_free_numeric(&numeric, &common);
  klu_free_symbolic(&symbolic, &common);
  return volts;
}

// From the description too, as ours; and the same with the matrix put together beforehand.
void linearBuildingByKlu(benchmark::State& state, bool matrixGiven) {
  const network::Network building = linearOffice(static_cast<std::size_t>(state.range(0)));
  klu_common common;
  klu_defaults(&common);
  bench::Nodal nodal(building);
  std::vector<network::Phasor> volts;
  for (auto _ : state) {
    if (!matrixGiven) nodal = bench::Nodal(building);
    volts = solvedByKlu(nodal, common);
  }
  state.counters["unknowns"] = static_cast<double>(nodal.size());
  state.counters["off_v"] = worstOffV(nodal, volts, solve(building, toMicrovolt()));
  if (!(state.counters["off_v"] <= 1e-6)) state.SkipWithError("the answers differ");
}

double childrensSeconds() {
  rusage usage{};
  getrusage(RUSAGE_CHILDREN, &usage);
  const auto seconds = [](const timeval& time) {
    return static_cast<double>(time.tv_sec) + 1e-6 * static_cast<double>(time.tv_usec);
  };
  return seconds(usage.ru_utime) + seconds(usage.ru_stime);
}

// The whole batch process: reading the netlist, setting up, one frequency, printing every volt.
void linearBuildingByNgspice(benchmark::State& state) {
  const network::Network building = linearOffice(static_cast<std::size_t>(state.range(0)));
  testing::Netlist netlist;
  netlist.add(0, building, solve(building, toMicrovolt()));
  for (auto _ : state) {
    const double before = childrensSeconds();
    if (netlist.run().empty()) {
      state.SkipWithError("ngspice did not answer");
      break;
    }
    state.SetIterationTime(childrensSeconds() - before);
  }
}

BENCHMARK(wholeBuilding)->RangeMultiplier(10)->Range(100, 100'000)->Unit(benchmark::kMillisecond);
BENCHMARK(exponentFrom100To100000)->Iterations(1)->Unit(benchmark::kMillisecond);
BENCHMARK(twoPercentStalled)->Arg(10'000)->Unit(benchmark::kMillisecond);
BENCHMARK(oneCircuitWithItsBusHeld)->Unit(benchmark::kMicrosecond);
BENCHMARK(onePanelToAMillivolt)->Unit(benchmark::kMicrosecond);
BENCHMARK(linearBuilding)->Arg(10'000)->Unit(benchmark::kMillisecond);
BENCHMARK(linearBuildingFromArrays)->Arg(10'000)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(linearBuildingByKlu, fromDescription, false)->Arg(10'000)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(linearBuildingByKlu, matrixGiven, true)->Arg(10'000)->Unit(benchmark::kMillisecond);
BENCHMARK(linearBuildingByNgspice)->Arg(10'000)->Iterations(1)->UseManualTime()->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace cordreach

BENCHMARK_MAIN();
