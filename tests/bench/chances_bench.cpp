// SPDX-License-Identifier: GPL-3.0-or-later
// Ten thousand samples of one circuit through a planned run of two hours: its breaker, a cycling load that starts
// whenever it likes, a machine behind an extension cord, with lengths and amps known within bands.
#include <benchmark/benchmark.h>

#include "study/chances.h"
#include "support/small_site.h"

namespace cordreach {
namespace {

site::Site plannedRun() {
  using testing::SmallSite;
  SmallSite building;
  building.circuit("1", 20, 90)
      .load("cooler", "1", 8.3, site::Cycle{7.0 * units::minute, 13.0 * units::minute})
      .load("snacks", "1", 2.2)
      .machine("M", tables::LoadClass::RectifiedDc, 14.6)
      .cord("C", 12, 50)
      .extension("C", "1")
      .plug("M", SmallSite::in("C"), {{18.0, 20.0}});
  auto run = building.site.at<site::Run>(site::RunId("1"));
  run.length = site::Stated<units::Length>{90.0 * units::foot, 60.0 * units::foot, 150.0 * units::foot, {}, {}, {}, {}};
  building.site.all<site::Run>().put(run);
  return building.site;
}

void tenThousandSamples(benchmark::State& state) {
  const site::Site site = plannedRun();
  double trips = 0.0;
  for (auto _ : state) trips = study::chanceOf(site, site::CircuitId("1"))->trips;
  state.counters["probability"] = trips;
}
BENCHMARK(tenThousandSamples)->Unit(benchmark::kMillisecond)->UseRealTime();

}  // namespace
}  // namespace cordreach

BENCHMARK_MAIN();
