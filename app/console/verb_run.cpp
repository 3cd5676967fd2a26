// SPDX-License-Identifier: GPL-3.0-or-later
// Reads the options of `run`.
#include "console/verb_run.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>

#include "console/console.h"
#include "console/run_output.h"
#include "io/site_file.h"
#include "units/parse.h"

namespace cordreach::console {

namespace {

constexpr units::Duration kSampleEvery = 5.0 * units::minute;  // of the table
constexpr std::size_t kChanceSamples = 2000;                   // a standard error of a hundredth at most

struct RunOptions {
  std::string site;
  std::string until = "12h";
  bool breakersStick = false;
  bool json = false;
  bool csv = false;
};

// Asked only where a curve trips: each takes as many runs of its own.
Chances chancesOf(const site::Site& site, const study::DayRun& run) {
  study::ChanceOptions options;
  options.samples = kChanceSamples;
  Chances chances;
  for (const study::DayCircuit& circuit : run.circuits) {
    const auto* id = std::get_if<site::CircuitId>(&circuit.subject);
    const bool asked = id != nullptr && circuit.trip && circuit.trip->earliest;
    chances.push_back(asked ? study::chanceOf(site, *id, options) : std::nullopt);
  }
  return chances;
}

int runRun(const RunOptions& options, const Console& console) {
  if (options.json && options.csv) return console.refuse({"usage.two_formats", "", {}});
  const base::Result<units::Duration> until = units::parseDuration(options.until);
  if (!until) return console.refuse("--until", until.error());
  if (!(until.value() > units::Duration{})) return console.refuse("--until", {"console.zero", options.until, {}});
  if (until.value() > timeline::kLongestDay) {
    return console.refuse("--until", {"console.too_long", options.until, {{"most_s", timeline::kLongestDay.si()}}});
  }
  const base::Result<site::Site> site = io::loadSite(options.site);
  if (!site) return console.refuseFile(options.site, site.error());
  study::DayRunOptions how;
  how.until = until.value();
  how.breakersAct = !options.breakersStick;
  if (options.csv) how.sampleEvery = kSampleEvery;
  const study::DayRun run = study::runDay(site.value(), how);
  const bool sound =
      std::none_of(run.events.begin(), run.events.end(), [](const study::DayEvent& event) { return event.isFault(); });
  const int exit = sound ? kSound : kUnsound;
  if (options.csv) return console.answer(runCsv(run), exit);
  const Chances chances = chancesOf(site.value(), run);
  if (options.json) return console.answer(runJson(run, chances), exit);
  return console.answer(runPage(site.value(), run, chances, console.book, console.color), exit);
}

}  // namespace

Work declareRun(CLI::App& command, Work& /*work*/) {
  const auto options = std::make_shared<RunOptions>();
  command.add_option("SITE", options->site, "Site file")->required();
  command.add_option("--until", options->until, "How long from its first hour: 90min, at\nmost 12h (12h if not given)");
  command.add_flag("--breakers-stick", options->breakersStick, "No breaker acts: what then goes on");
  command.add_flag("--json", options->json, "One line of JSON");
  command.add_flag("--csv", options->csv, "Amps and temperatures every 5 minutes");
  return [options](const Console& console) { return runRun(*options, console); };
}

}  // namespace cordreach::console
