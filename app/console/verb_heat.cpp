// SPDX-License-Identifier: GPL-3.0-or-later
// Reads the options of `heat`, refusing one by one what can't be.
#include "console/verb_heat.h"

#include <CLI/CLI.hpp>
#include <charconv>
#include <memory>

#include "console/arguments.h"
#include "console/console.h"
#include "console/heat_answer.h"
#include "console/heat_output.h"
#include "units/parse.h"

namespace cordreach::console {

namespace {

constexpr double kDefaultTurns = 10.0;  // a hank as people make it
constexpr double kDefaultLayers = 3.0;  // of a reel
constexpr double kMostTurns = 200.0;
constexpr units::Duration kLongestRun = 7.0 * 24.0 * units::hour;

struct HeatOptions {
  std::string cord;
  std::string amps;
  std::string ambient = "25C";
  std::string lay;
  std::string turns;
  std::string coiled;
  std::string run;
  std::string measured;
  bool json = false;
  bool csv = false;
};

// A value read, or the exit code after it was refused.
using Refusal = std::optional<int>;

template <class T>
Refusal take(const Console& console, const char* option, base::Result<T> result, T& into) {
  if (!result) return console.refuse(option, result.error());
  into = std::move(result).value();
  return std::nullopt;
}

base::Result<double> parseTurns(const std::string& text) {
  double turns = 0.0;
  const auto end = std::from_chars(text.data(), text.data() + text.size(), turns);
  if (end.ec != std::errc{} || end.ptr != text.data() + text.size()) return base::Error{"units.not_a_number", text, {}};
  if (!(turns >= 1.0 && turns <= kMostTurns)) return base::Error{"console.too_many_turns", text, {{"turns", text}}};
  return turns;
}

// --turns or --coiled without --lay can only mean a coil.
Refusal readLaying(const HeatOptions& options, const Console& console, HeatQuestion& question) {
  site::LayingOfCord& laying = question.laying;
  const bool coil = !options.turns.empty() || !options.coiled.empty();
  const std::string lay = !options.lay.empty() ? options.lay : coil ? "coiled" : "floor";
  if (const Refusal refusal = take(console, "--lay", parseLaying(lay), laying.laying)) return refusal;
  const bool wound = laying.laying == tables::Laying::Coiled || laying.laying == tables::Laying::Reel;
  if (coil && !wound) return console.refuse({"console.not_wound", lay, {}});
  if (wound) laying.turns = laying.laying == tables::Laying::Reel ? kDefaultLayers : kDefaultTurns;
  if (!options.turns.empty()) {
    if (const Refusal refusal = take(console, "--turns", parseTurns(options.turns), laying.turns)) return refusal;
  }
  if (options.coiled.empty()) return std::nullopt;
  units::Length coiled;
  if (const Refusal refusal = take(console, "--coiled", units::parseLength(options.coiled), coiled)) return refusal;
  const units::Length whole = question.cord.length->value;
  if (coiled > whole) {
    return console.refuse(
        "--coiled", {"console.coiled_too_long", options.coiled, {{"coiled_m", coiled.si()}, {"length_m", whole.si()}}});
  }
  laying.affected = coiled;
  if (coiled == 0.0 * units::metre) laying = {};
  return std::nullopt;
}

Refusal readQuestion(const HeatOptions& options, const Console& console, HeatQuestion& question) {
  if (options.json && options.csv) return console.refuse({"usage.two_formats", "", {}});
  if (const auto refusal = take(console, "--cord", parseCordArgument(options.cord), question.cord)) return refusal;
  if (const auto refusal = take(console, "--amps", units::parseCurrent(options.amps), question.amps)) return refusal;
  if (const auto refusal = take(console, "--ambient", units::parseTemperature(options.ambient), question.air)) {
    return refusal;
  }
  if (const auto refusal = take(console, "--for", units::parseDuration(options.run), question.run)) return refusal;
  if (!(question.run > units::Duration{})) return console.refuse("--for", {"console.zero", options.run, {}});
  if (question.run > kLongestRun) {
    return console.refuse("--for", {"console.too_long", options.run, {{"most_s", kLongestRun.si()}}});
  }
  if (question.air < kColdestAir || question.air > kHottestAir) {
    return console.refuse(
        "--ambient",
        {"console.air", options.ambient, {{"least_c", kColdestAir.celsius()}, {"most_c", kHottestAir.celsius()}}});
  }
  if (!options.measured.empty()) {
    site::JacketReading reading;
    auto read = parseReadingArgument(options.measured, question.air);
    if (const auto refusal = take(console, "--measured", std::move(read), reading)) return refusal;
    question.cord.jacketReading = reading;
  }
  return readLaying(options, console, question);
}

int runHeat(const HeatOptions& options, const Console& console) {
  HeatQuestion question{{}, {}, {}, units::Temperature::fromCelsius(25.0), {}};
  if (const Refusal refusal = readQuestion(options, console, question)) return *refusal;
  const HeatAnswer answer = answerHeat(question);
  const int exit = heatVerdict(question, answer).severity >= rules::Severity::Caution ? kUnsound : kSound;
  if (options.json) return console.answer(heatJson(answer), exit);
  if (options.csv) return console.answer(heatCsv(answer), exit);
  return console.answer(heatPage(question, answer, console.book, console.color), exit);
}

}  // namespace

Work declareHeat(CLI::App& command, Work& /*work*/) {
  const auto options = std::make_shared<HeatOptions>();
  command.add_option("--cord", options->cord, "Its print and length: \"SJTW 16/3 50ft\"")->required();
  command.add_option("--amps", options->amps, "What flows: 15A")->required();
  command.add_option("--for", options->run, "How long: 2h")->required();
  command.add_option("--ambient", options->ambient, "Air around it: 77F (25C if not given)");
  command.add_option("--lay", options->lay, "straight, floor, carpet, covered,\ncoiled or reel");
  command.add_option("--turns", options->turns, "Turns of the coil, layers on the reel");
  command.add_option("--coiled", options->coiled, "How much of it is coiled: 30ft");
  command.add_option("--measured", options->measured, "Its jacket once, warmed through:\n\"48C at 13A in 25C floor\"");
  command.add_flag("--json", options->json, "One line of JSON");
  command.add_flag("--csv", options->csv, "The curve as a table");
  return [options](const Console& console) { return runHeat(*options, console); };
}

}  // namespace cordreach::console
