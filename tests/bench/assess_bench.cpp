// SPDX-License-Identifier: GPL-3.0-or-later
// A plan, answered as the map asks for it while a plug is dragged or after an edit, and judged: the demo building's, by
// moments and with its evening followed, and that of a large building.
#include <benchmark/benchmark.h>

#include <cstdlib>

#include "bench/large_site.h"
#include "io/site_file.h"
#include "rules/judge.h"
#include "study/assess.h"

namespace cordreach {
namespace {

const site::Site& demo() {
  static const site::Site site = [] {
    auto read = io::loadSite("resources/demo/building.json");
    if (!read) std::abort();
    return std::move(read).value();
  }();
  return site;
}

void demoPlan(benchmark::State& state, bool inTime) {
  study::StudyOptions options;
  options.inTime = inTime;
  std::size_t findings = 0;
  for (auto _ : state) findings = rules::judge(demo(), study::assess(demo(), options)).size();
  state.counters["findings"] = static_cast<double>(findings);
}

void largePlan(benchmark::State& state) {
  const bench::LargeSite large;
  std::size_t findings = 0;
  for (auto _ : state) findings = rules::judge(large.site, study::assess(large.site, {})).size();
  state.counters["findings"] = static_cast<double>(findings);
}

BENCHMARK(largePlan)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(demoPlan, byMoments, false)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(demoPlan, inTime, true)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace cordreach

BENCHMARK_MAIN();
