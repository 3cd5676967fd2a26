// SPDX-License-Identifier: GPL-3.0-or-later
// One cord through two hours of work with pauses, against Boost.Odeint's Rosenbrock method on the same equations.
// Both say how far from a converged run they ended up at worst; the rival's tolerance is chosen so that it is about as
// near. Its slopes are those of our own step, written here, so that it pays no finite differences.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "against/physics/rosenbrock4.h"
#include "physics/cord_section.h"

namespace cordreach {
namespace {

struct Stretch {
  double rmsA;
  double durationS;
};

constexpr std::array<Stretch, 8> kTwoHours{
    {{15, 1200}, {0, 300}, {18, 600}, {12, 1500}, {0, 600}, {15, 1800}, {20, 300}, {10, 900}}};
constexpr double kAirC = 25.0;

physics::CordLadder cord() { return ladderOf(physics::CordSection{units::WireSize::awg(16)}, physics::Corner::Likely); }

using Track = std::array<double, kTwoHours.size()>;  // the conductor at the end of each stretch

double worstK(const Track& a, const Track& b) {
  double worst = 0;
  for (std::size_t i = 0; i < a.size(); ++i) worst = std::max(worst, std::abs(a[i] - b[i]));
  return worst;
}

Track ours(const physics::CordLadder& ladder) {
  Track track{};
  physics::LadderRun run(ladder, units::Temperature::fromCelsius(kAirC));
  for (std::size_t i = 0; i < track.size(); ++i) {
    run.advance(kTwoHours[i].rmsA * units::ampere, kTwoHours[i].durationS * units::second);
    track[i] = run.now().conductor.celsius();
  }
  return track;
}

// The ladder's rates and slopes at one current.
testing::StiffSystem systemOf(const physics::CordLadder& l, double rmsA) {
  const auto air = units::Temperature::fromCelsius(kAirC);
  const auto surfaceAt = [&l, air](double bodyC) {
    return surfaceTemperature(l.surface, units::Temperature::fromCelsius(bodyC), l.resistance2s, air);
  };
  const double heatAt20 = rmsA * rmsA * l.ohmPerM20;
  const double g01 = 1 / l.resistance01;
  const double g12 = 1 / l.resistance12;
  const auto rates = [=, &l](const testing::Three& at) -> testing::Three {
    const auto& c = l.capacityJPerMK;
    const double made = heatAt20 * (1 + l.alphaPerK * (at[0] - 20));
    const double flow01 = (at[0] - at[1]) * g01;
    const double flow12 = (at[1] - at[2]) * g12;
    const double out = l.surface.lossWPerM(surfaceAt(at[2]), air);
    return {(l.sourceShare * made - flow01) / c[0], (flow01 - flow12) / c[1],
            ((1 - l.sourceShare) * made + flow12 - out) / c[2]};
  };
  const auto slopes = [=, &l](const testing::Three& at) -> std::array<testing::Three, 3> {
    const auto& c = l.capacityJPerMK;
    const double feedback = heatAt20 * l.alphaPerK;
    const double lossSlope = std::max(l.surface.slopeWPerMK(surfaceAt(at[2]), air), 1e-9);
    const double out = 1 / (l.resistance2s + 1 / lossSlope);
    return {testing::Three{(l.sourceShare * feedback - g01) / c[0], g01 / c[0], 0},
            testing::Three{g01 / c[1], -(g01 + g12) / c[1], g12 / c[1]},
            testing::Three{(1 - l.sourceShare) * feedback / c[2], g12 / c[2], -(g12 + out) / c[2]}};
  };
  return {rates, slopes};
}

Track byOdeint(const physics::CordLadder& ladder, double toleranceK) {
  Track track{};
  testing::Three nodesC{kAirC, kAirC, kAirC};
  for (std::size_t i = 0; i < track.size(); ++i) {
    nodesC = byRosenbrock4(systemOf(ladder, kTwoHours[i].rmsA), nodesC, kTwoHours[i].durationS, toleranceK, 5.0);
    track[i] = nodesC[0];
  }
  return track;
}

const Track& converged() {
  static const Track track = byOdeint(cord(), 1e-7);
  return track;
}

void cordThroughTwoHours(benchmark::State& state) {
  const physics::CordLadder ladder = cord();
  Track track{};
  for (auto _ : state) track = ours(ladder);
  state.counters["error_k"] = worstK(track, converged());
}

void cordThroughTwoHoursByOdeint(benchmark::State& state) {
  constexpr double kToleranceK = 0.02;
  const physics::CordLadder ladder = cord();
  Track track{};
  for (auto _ : state) track = byOdeint(ladder, kToleranceK);
  state.counters["error_k"] = worstK(track, converged());
}

BENCHMARK(cordThroughTwoHours)->Unit(benchmark::kMicrosecond);
BENCHMARK(cordThroughTwoHoursByOdeint)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace cordreach

BENCHMARK_MAIN();
