// SPDX-License-Identifier: GPL-3.0-or-later
// Making the law of a motor from its plate, which is done for every machine of a site.
#include <benchmark/benchmark.h>

#include "physics/load_nameplate.h"

namespace cordreach {
namespace {

void makeLaw(benchmark::State& state, physics::LoadModel model) {
  physics::Nameplate plate;
  plate.model = model;
  plate.current = 3.0 * units::ampere;
  for (auto _ : state) benchmark::DoNotOptimize(physics::makeLoadLaw(plate));
}

BENCHMARK_CAPTURE(makeLaw, airMover, physics::LoadModel::InductionFan)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(makeLaw, swingMachine, physics::LoadModel::Induction)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace cordreach

BENCHMARK_MAIN();
