// SPDX-License-Identifier: GPL-3.0-or-later
// Reads the options of `cord`, refusing one by one what can't be.
#include "console/verb_cord.h"

#include <CLI/CLI.hpp>
#include <memory>

#include "console/arguments.h"
#include "console/console.h"
#include "console/cord_output.h"
#include "io/site_file.h"
#include "physics/breaker_spec.h"
#include "units/parse.h"

namespace cordreach::console {

namespace {

constexpr units::Length kFarthest = 1000.0 * units::metre;

struct CordOptions {
  std::string machine;
  std::string distance;
  std::string breaker;
  std::string run;
  std::string receptacle;
  std::string cart;
  bool json = false;
};

using Refusal = std::optional<int>;

template <class T>
site::Known<T> stated(T value, const std::string& typed) {
  return site::Stated<T>{std::move(value), {}, {}, typed, {}, {}, {}};
}

Refusal readBreaker(const CordOptions& options, const Console& console, planning::CordQuestion& question) {
  if (options.breaker == "unknown") return std::nullopt;
  const base::Result<physics::Breaker> breaker = physics::parseBreaker(options.breaker);
  if (!breaker) return console.refuse("--breaker", breaker.error());
  question.breaker = breaker.value().rating;
  return std::nullopt;
}

Refusal readRun(const CordOptions& options, const Console& console, planning::CordQuestion& question) {
  if (options.run.empty()) return std::nullopt;
  const base::Result<units::WireRun> run = units::parseWireRun(options.run);
  if (!run) return console.refuse("--run", run.error());
  question.run = stated(run.value().length, options.run);
  question.runSize = stated(run.value().size, options.run);
  return std::nullopt;
}

Refusal readQuestion(const CordOptions& options, const Console& console, planning::CordQuestion& question) {
  base::Result<site::Inlet> inlet = parseMachineArgument(options.machine);
  if (!inlet) return console.refuse("--machine", inlet.error());
  question.inlet = std::move(inlet).value();
  const base::Result<units::Length> distance = units::parseLength(options.distance);
  if (!distance) return console.refuse("--distance", distance.error());
  if (distance.value() > kFarthest) {
    return console.refuse("--distance", {"console.too_far", options.distance, {{"most_m", kFarthest.si()}}});
  }
  question.distance = distance.value();
  if (const Refusal refusal = readBreaker(options, console, question)) return refusal;
  if (const Refusal refusal = readRun(options, console, question)) return refusal;
  if (!options.receptacle.empty() && options.receptacle != "5-15" && options.receptacle != "5-20") {
    return console.refuse("--receptacle", {"console.no_receptacle", options.receptacle, {}});
  }
  question.receptacle = options.receptacle;
  return std::nullopt;
}

int runCord(const CordOptions& options, const Console& console) {
  planning::CordQuestion question{};
  question.name = console.book.say("word.the_machine");
  if (const Refusal refusal = readQuestion(options, console, question)) return *refusal;
  std::optional<site::Site> cart;
  if (!options.cart.empty()) {
    base::Result<site::Site> site = io::loadSite(options.cart);
    if (!site) return console.refuseFile(options.cart, site.error());
    cart = std::move(site).value();
    question.cart = &*cart;
  }
  const planning::CordAdvice advice = planning::chooseCord(question);
  // An extension that is needed and not found is unsound whatever the best of the rest would be.
  const bool unsound = (advice.extensionNeeded && !advice.choice) || advice.verdict >= rules::Severity::Caution;
  const int exit = unsound ? kUnsound : kSound;
  if (options.json) return console.answer(cordJson(advice, console.book), exit);
  return console.answer(cordPage(advice, console.book, console.color), exit);
}

}  // namespace

Work declareCord(CLI::App& command, Work& /*work*/) {
  const auto options = std::make_shared<CordOptions>();
  command.add_option("--machine", options->machine, "Plate amps, kind, own cord:\n\"15A induction 14AWG/50ft\"")
      ->required();
  command.add_option("--distance", options->distance, "Outlet to the farthest work: 90ft")->required();
  command.add_option("--breaker", options->breaker, "Of the outlet: 20A, or unknown")->required();
  command.add_option("--run", options->run, "Panel to outlet: 60ft/12AWG");
  command.add_option("--receptacle", options->receptacle, "5-15 or 5-20");
  command.add_option("--cart", options->cart, "Site file whose cords may be taken");
  command.add_flag("--json", options->json, "One line of JSON");
  return [options](const Console& console) { return runCord(*options, console); };
}

}  // namespace cordreach::console
