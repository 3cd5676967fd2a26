// SPDX-License-Identifier: GPL-3.0-or-later
// Reads the options of `cord`, refusing one by one what can't be.
#include "console/verb_cord.h"

#include <CLI/CLI.hpp>
#include <memory>

#include "console/arguments.h"
#include "console/console.h"
#include "console/cord_output.h"
#include "console/wiring_argument.h"
#include "io/site_file.h"
#include "physics/breaker_spec.h"
#include "planning/cord_plan.h"
#include "site/file_words.h"
#include "site/queries.h"
#include "tables/receptacles.h"
#include "units/parse.h"
#include "units/time_of_day.h"

namespace cordreach::console {

namespace {

constexpr units::Length kFarthest = 1000.0 * units::metre;
constexpr int kMinutesOfDay = 24 * 60;

struct CordOptions {
  std::string machine;
  std::string distance;
  std::string breaker;
  std::string run;
  std::string receptacle;
  std::string colour;
  std::string site;
  std::string at;
  std::string hookup;
  std::string hours;
  std::string cart;
  std::string cord;
  planning::CordWhatIf whatIf;
  bool wet = false;
  bool json = false;
};

// Files that the question keeps references to.
struct CordSites {
  std::optional<site::Site> building;
  std::optional<site::Site> cart;
};

using Refusal = std::optional<int>;

Refusal readBreaker(const CordOptions& options, const Console& console, planning::CordQuestion& question) {
  if (options.breaker == "unknown" || !options.at.empty() || !options.hookup.empty()) return std::nullopt;
  if (options.breaker.empty()) return console.refuse({"console.no_breaker", {}, {}});
  const base::Result<physics::Breaker> breaker = physics::parseBreaker(options.breaker);
  if (!breaker) return console.refuse("--breaker", breaker.error());
  question.breaker = breaker.value().rating;
  return std::nullopt;
}

Refusal readFace(const CordOptions& options, const Console& console, planning::CordQuestion& question) {
  if (!options.receptacle.empty() && tables::receptacleType(options.receptacle) == nullptr) {
    return console.refuse("--receptacle", {"console.no_receptacle", options.receptacle, {}});
  }
  question.receptacle = options.receptacle;
  if (options.colour.empty()) return std::nullopt;
  const auto colour = site::fromFileWord<site::FaceColour>(options.colour);
  if (!colour) return console.refuse("--colour", {"console.no_colour", options.colour, {}});
  question.colour = *colour;
  return std::nullopt;
}

// `7`, or `7/lower`: an outlet by its label or id, and its contact; without one the first.
std::optional<planning::SiteContact> contactNamed(const std::string& text, const site::Site& site) {
  const auto slash = text.find('/');
  const std::string outlet = text.substr(0, slash);
  const std::string contact = slash == std::string::npos ? "" : text.substr(slash + 1);
  for (const site::Outlet& one : site.all<site::Outlet>()) {
    if (one.label != outlet && one.id.text() != outlet) continue;
    for (const site::Contact& at : one.contacts) {
      if (contact.empty() || at.name == contact) return planning::SiteContact{&site, one.id, at.name};
    }
  }
  return std::nullopt;
}

Refusal load(const std::string& path, const Console& console, std::optional<site::Site>& into) {
  base::Result<site::Site> site = io::loadSite(path);
  if (!site) return console.refuseFile(path, site.error());
  into = std::move(site).value();
  return std::nullopt;
}

// Where the hookup is plugged in by the plan, for a question that names no outlet.
std::optional<planning::SiteContact> plannedContact(const site::Hookup& hookup, const site::Site& site) {
  const auto chain = site::chainOf(site, hookup);
  if (!chain) return std::nullopt;
  return planning::SiteContact{&site, chain->outlet.outlet, chain->outlet.contact};
}

Refusal readPlace(const CordOptions& options, const Console& console, CordSites& sites,
                  planning::CordQuestion& question) {
  const std::string& asked = options.at.empty() ? options.hookup : options.at;
  if (asked.empty()) return std::nullopt;
  const std::string option = options.at.empty() ? "--hookup" : "--at";
  if (options.site.empty()) return console.refuse(option, {"console.no_site", asked, {}});
  if (const Refusal refusal = load(options.site, console, sites.building)) return refusal;
  const site::Site& site = *sites.building;
  const site::Hookup* hookup =
      options.hookup.empty() ? nullptr : site.find<site::Hookup>(site::HookupId(options.hookup));
  if (!options.hookup.empty() && hookup == nullptr) {
    return console.refuse("--hookup", {"console.no_such_hookup", options.hookup, {}});
  }
  question.at = options.at.empty() ? plannedContact(*hookup, site) : contactNamed(options.at, site);
  if (!question.at) return console.refuse(option, {"console.no_outlet", asked, {}});
  if (hookup != nullptr) planning::askAbout(*hookup, question);
  return std::nullopt;
}

// `18:00-20:00`; an end before the begin is on the next day.
Refusal readHours(const CordOptions& options, const Console& console, planning::CordQuestion& question) {
  if (options.hours.empty()) return std::nullopt;
  const auto dash = options.hours.find('-');
  const base::Error refused{"console.no_hours", options.hours, {}};
  if (dash == std::string::npos) return console.refuse("--hours", refused);
  const auto from = units::parseTimeOfDay(options.hours.substr(0, dash));
  const auto until = units::parseTimeOfDay(options.hours.substr(dash + 1));
  if (!from || !until || from.value() == until.value()) return console.refuse("--hours", refused);
  const int wrapped = until.value() < from.value() ? kMinutesOfDay : 0;
  question.hours =
      site::Hours{from.value().minutes() * units::minute, (until.value().minutes() + wrapped) * units::minute};
  return std::nullopt;
}

Refusal readMachine(const CordOptions& options, const Console& console, planning::CordQuestion& question) {
  if (!options.hookup.empty()) return std::nullopt;
  if (options.machine.empty()) return console.refuse({"console.no_machine", {}, {}});
  base::Result<site::Inlet> inlet = parseMachineArgument(options.machine);
  if (!inlet) return console.refuse("--machine", inlet.error());
  question.inlet = std::move(inlet).value();
  question.wet = options.wet;
  return std::nullopt;
}

Refusal readJacket(const CordOptions& options, const Console& console, planning::CordQuestion& question) {
  if (options.cord.empty()) return std::nullopt;
  base::Result<site::CordMake> make = parseCordArgument(options.cord);
  if (!make) return console.refuse("--cord", make.error());
  question.jacket = std::move(make).value();
  return std::nullopt;
}

Refusal readQuestion(const CordOptions& options, const Console& console, CordSites& sites,
                     planning::CordQuestion& question) {
  if (const Refusal refusal = readMachine(options, console, question)) return refusal;
  question.whatIf = options.whatIf;
  const base::Result<units::Length> distance = units::parseLength(options.distance);
  if (!distance) return console.refuse("--distance", distance.error());
  if (distance.value() > kFarthest) {
    return console.refuse("--distance", {"console.too_far", options.distance, {{"most_m", kFarthest.si()}}});
  }
  question.distance = distance.value();
  if (const Refusal refusal = readBreaker(options, console, question)) return refusal;
  if (const Refusal refusal = readRun(options.run, console, question)) return refusal;
  if (const Refusal refusal = readFace(options, console, question)) return refusal;
  if (const Refusal refusal = readJacket(options, console, question)) return refusal;
  if (const Refusal refusal = readHours(options, console, question)) return refusal;
  if (!options.cart.empty()) {
    if (const Refusal refusal = load(options.cart, console, sites.cart)) return refusal;
    question.cart = &*sites.cart;
  }
  return readPlace(options, console, sites, question);
}

int runCord(const CordOptions& options, const Console& console) {
  planning::CordQuestion question{};
  question.name = console.book.say("word.the_machine");
  CordSites sites;
  if (const Refusal refusal = readQuestion(options, console, sites, question)) return *refusal;
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
  auto* machine =
      command.add_option("--machine", options->machine, "Plate amps, kind, own cord:\n\"15A induction 14AWG/50ft\"");
  command.add_option("--distance", options->distance, "Outlet to the farthest work: 90ft")->required();
  command.add_option("--breaker", options->breaker, "Of the outlet: 20A, or unknown");
  command.add_option("--run", options->run, "Panel to outlet: 60ft/12AWG");
  command.add_option("--receptacle", options->receptacle, "Its face: 5-15, 5-20, ...");
  command.add_option("--colour", options->colour, "Of the face: white, red, orange, ...");
  command.add_option("--site", options->site, "Site file that --at is in");
  command.add_option("--at", options->at, "Outlet of the site, with its contact: 7/upper");
  auto* hookup = command.add_option("--hookup", options->hookup, "Machine and hours as planned there: H03");
  auto* hours = command.add_option("--hours", options->hours, "Of the job: 18:00-20:00");
  command.add_option("--cart", options->cart, "Site file whose cords may be taken");
  command.add_option("--cord", options->cord, "Only this one: \"SJTW 12/3 75ft\"");
  auto* wet = command.add_flag("--wet", options->wet, "The machine works with water");
  hookup->excludes(machine)->excludes(hours)->excludes(wet);
  command.add_flag("--hot-day", options->whatIf.hotDay, "What if: 40 °C everywhere");
  command.add_flag("--low-supply", options->whatIf.lowSupply, "What if: 5 % below nominal");
  command.add_flag("--tired-breaker", options->whatIf.tiredBreaker, "What if: early on load, unsure in a fault");
  command.add_flag("--coiled", options->whatIf.coiled, "What if: the cord left coiled");
  command.add_flag("--second-machine", options->whatIf.secondMachine, "What if: the same again on its circuit");
  command.add_flag("--chained", options->whatIf.chained, "What if: two joined instead of one");
  command.add_flag("--json", options->json, "One line of JSON");
  return [options](const Console& console) { return runCord(*options, console); };
}

}  // namespace cordreach::console
