// SPDX-License-Identifier: GPL-3.0-or-later
// Reads the options of `fault`, refusing one by one what can't be.
#include "console/verb_fault.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <array>
#include <memory>
#include <utility>

#include "console/arguments.h"
#include "console/console.h"
#include "console/fault_output.h"
#include "console/wiring_argument.h"
#include "units/parse.h"

namespace cordreach::console {

namespace {

using site::SupplyKindOfSource;

// Own: rooms and panels, and the air that the heat models were made for.
constexpr units::Temperature kColdest = units::Temperature::fromCelsius(-30.0);
constexpr units::Temperature kHottest = units::Temperature::fromCelsius(60.0);

constexpr std::array<std::pair<std::string_view, SupplyKindOfSource>, 3> kSources{{
    {"utility", SupplyKindOfSource::Utility},
    {"generator", SupplyKindOfSource::Generator},
    {"inverter", SupplyKindOfSource::Inverter},
}};

struct FaultOptions {
  std::string cord;
  std::string breaker;
  std::string run;
  std::string carrying;
  std::string ambient;
  std::string source;
  std::string limit;
  bool noEarth = false;
  bool groundFault = false;
  bool mayNotTrip = false;
  bool json = false;
};

using Refusal = std::optional<int>;

Refusal readWiring(const FaultOptions& options, const Console& console, planning::FaultQuestion& question) {
  base::Result<site::CordMake> cord = parseCordArgument(options.cord);
  if (!cord) return console.refuse("--cord", cord.error());
  question.cord = std::move(cord).value();
  const base::Result<physics::Breaker> breaker = physics::parseBreaker(options.breaker);
  if (!breaker) return console.refuse("--breaker", breaker.error());
  question.breaker = breaker.value();
  return readRun(options.run, console, question);
}

Refusal readConditions(const FaultOptions& options, const Console& console, planning::FaultQuestion& question) {
  if (!options.carrying.empty()) {
    const base::Result<units::Current> carrying = units::parseCurrent(options.carrying);
    if (!carrying) return console.refuse("--carrying", carrying.error());
    if (carrying.value() > question.breaker.rating) {
      return console.refuse("--carrying",
                            {"console.over_breaker", options.carrying, {{"rating_a", question.breaker.rating.si()}}});
    }
    question.carrying = carrying.value();
  }
  if (options.ambient.empty()) return std::nullopt;
  const base::Result<units::Temperature> air = units::parseTemperature(options.ambient);
  if (!air) return console.refuse("--ambient", air.error());
  if (air.value() < kColdest || air.value() > kHottest) {
    return console.refuse(
        "--ambient",
        {"console.air", options.ambient, {{"least_c", kColdest.celsius()}, {"most_c", kHottest.celsius()}}});
  }
  question.air = air.value();
  return std::nullopt;
}

Refusal readSource(const FaultOptions& options, const Console& console, planning::FaultQuestion& question) {
  if (!options.source.empty()) {
    const auto* known = std::find_if(kSources.begin(), kSources.end(),
                                     [&](const auto& source) { return source.first == options.source; });
    if (known == kSources.end()) return console.refuse("--source", {"console.no_such_source", options.source, {}});
    question.source = known->second;
  }
  if (options.limit.empty()) return std::nullopt;
  const base::Result<units::Current> limit = units::parseCurrent(options.limit);
  if (!limit) return console.refuse("--limit", limit.error());
  if (!(limit.value() > units::Current{})) return console.refuse("--limit", {"console.zero", options.limit, {}});
  question.sourceLimit = stated(limit.value(), options.limit);
  return std::nullopt;
}

int runFault(const FaultOptions& options, const Console& console) {
  planning::FaultQuestion question;
  if (const Refusal refusal = readWiring(options, console, question)) return *refusal;
  if (const Refusal refusal = readConditions(options, console, question)) return *refusal;
  if (const Refusal refusal = readSource(options, console, question)) return *refusal;
  question.earthBroken = options.noEarth;
  question.groundFaultDevice = options.groundFault;
  question.mayNotTrip = options.mayNotTrip;
  const planning::FaultCheck check = planning::checkFault(question);
  const int exit = check.verdict >= rules::Severity::Caution ? kUnsound : kSound;
  if (options.json) return console.answer(faultJson(question, check), exit);
  return console.answer(faultPage(question, check, console.book, console.color), exit);
}

}  // namespace

Work declareFault(CLI::App& command, Work& /*work*/) {
  const auto options = std::make_shared<FaultOptions>();
  command.add_option("--cord", options->cord, "Print and length: \"SJTW 16/3 100ft\"")->required();
  command.add_option("--breaker", options->breaker, "Its rating: 20A, B16, \"15A fuse\"")->required();
  command.add_option("--run", options->run, "Panel to outlet: 60ft/12AWG");
  command.add_option("--carrying", options->carrying, "What flowed before: 12A");
  command.add_option("--ambient", options->ambient, "Air everywhere");
  command.add_option("--source", options->source, "utility, generator or inverter");
  command.add_option("--limit", options->limit, "To which a generator or inverter\nlimits itself: 30A");
  command.add_flag("--no-earth", options->noEarth, "The earth is broken: a pin is gone");
  command.add_flag("--ground-fault", options->groundFault, "A ground-fault device is there");
  command.add_flag("--may-not-trip", options->mayNotTrip, "The breaker is not to be relied on");
  command.add_flag("--json", options->json, "One line of JSON");
  return [options](const Console& console) { return runFault(*options, console); };
}

}  // namespace cordreach::console
