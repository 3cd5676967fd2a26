// SPDX-License-Identifier: GPL-3.0-or-later
// Reads the options of `start`: a hookup of a site, or a machine, its breaker and what lies between.
#include "console/verb_start.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <array>
#include <charconv>
#include <memory>

#include "console/arguments.h"
#include "console/console.h"
#include "console/start_output.h"
#include "io/site_file.h"
#include "rules/judge.h"
#include "study/assess.h"
#include "units/parse.h"

namespace cordreach::console {

namespace {

struct StartOptions {
  std::string site;
  std::string hookup;
  std::string machine;
  std::string kind;
  std::string breaker;
  std::string run;
  std::string cord;
  std::string carrying;
  std::string inertia;
  std::string speed;
  bool json = false;
};

using Refusal = std::optional<int>;

constexpr std::array<std::string_view, 3> kKinds = {"burnisher", "slow-machine", "air-mover"};

// A plain number in the unit of the option, over 0 and up to `most`.
std::optional<double> numberOf(const std::string& text, double most) {
  double value = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  const bool whole = error == std::errc{} && end == text.data() + text.size();
  return whole && value > 0.0 && value <= most ? std::optional(value) : std::nullopt;
}

Refusal readTurning(const StartOptions& options, const Console& console, StartAsked& asked) {
  if (!options.kind.empty() && std::find(kKinds.begin(), kKinds.end(), options.kind) == kKinds.end()) {
    return console.refuse("--kind", {"console.no_such_kind", options.kind, {}});
  }
  asked.kind = options.kind;
  constexpr double kMostKgM2 = 100.0;
  constexpr double kMostRpm = 30000.0;
  if (!options.inertia.empty()) {
    const auto inertia = numberOf(options.inertia, kMostKgM2);
    if (!inertia) return console.refuse("--inertia", {"console.not_a_measure", options.inertia, {}});
    asked.inertiaKgM2 = site::known(*inertia);
  }
  if (!options.speed.empty()) {
    const auto rpm = numberOf(options.speed, kMostRpm);
    if (!rpm) return console.refuse("--speed", {"console.not_a_measure", options.speed, {}});
    asked.speed = site::known(*rpm / 60.0 * units::hertz);
  }
  return std::nullopt;
}

Refusal readWay(const StartOptions& options, const Console& console, StartAsked& asked) {
  const base::Result<physics::Breaker> breaker = physics::parseBreaker(options.breaker);
  if (!breaker) return console.refuse("--breaker", breaker.error());
  asked.breaker = breaker.value();
  const base::Result<units::WireRun> run = units::parseWireRun(options.run);
  if (!run) return console.refuse("--run", run.error());
  asked.run = run.value();
  if (!options.cord.empty()) {
    const base::Result<site::CordMake> cord = parseCordArgument(options.cord);
    if (!cord) return console.refuse("--cord", cord.error());
    asked.extension = cord.value();
  }
  if (!options.carrying.empty()) {
    const base::Result<units::Current> carrying = units::parseCurrent(options.carrying);
    if (!carrying) return console.refuse("--carrying", carrying.error());
    asked.carrying = carrying.value();
  }
  return std::nullopt;
}

// The findings about this start alone, not about what comes on beside it.
std::vector<rules::Finding> aboutStart(const StartQuestion& question) {
  const study::Answer answer = study::assess(question.site);
  std::vector<rules::Finding> findings = rules::judge(question.site, answer);
  const rules::Subject own{rules::SubjectKind::Hookup, question.hookup.text()};
  std::erase_if(findings, [&](const rules::Finding& finding) {
    return finding.code.rfind("start.", 0) != 0 || finding.subjects.front() != own;
  });
  return findings;
}

int reply(const StartOptions& options, const Console& console, const StartQuestion& question) {
  const auto study = study::startStudyOf(question.site, question.site.at<site::Hookup>(question.hookup));
  if (!study) return console.refuse({"console.never_on", options.hookup, {}});
  const StartReply answered{question, *study, aboutStart(question)};
  const int exit = answered.severity() >= rules::Severity::Caution ? kUnsound : kSound;
  if (options.json) return console.answer(startJson(answered), exit);
  return console.answer(startPage(answered, console.book, console.color), exit);
}

int runSite(const StartOptions& options, const Console& console) {
  if (options.hookup.empty()) return console.refuse({"console.no_hookup", "", {}});
  base::Result<site::Site> site = io::loadSite(options.site);
  if (!site) return console.refuseFile(options.site, site.error());
  const auto& hookups = site.value().all<site::Hookup>();
  const auto at = std::find_if(hookups.begin(), hookups.end(),
                               [&](const site::Hookup& hookup) { return hookup.id.text() == options.hookup; });
  if (at == hookups.end()) return console.refuse("--hookup", {"console.no_such_hookup", options.hookup, {}});
  const site::HookupId id = at->id;
  return reply(options, console, {std::move(site).value(), id});
}

int runStart(const StartOptions& options, const Console& console) {
  const bool ofSite = !options.site.empty();
  const bool ofMachine = !options.machine.empty();
  if (ofSite == ofMachine) return console.refuse({"console.site_or_machine", "", {}});
  if (ofSite) return runSite(options, console);
  StartAsked asked{};
  asked.name = console.book.say("word.the_machine");
  const base::Result<site::Inlet> inlet = parseMachineArgument(options.machine);
  if (!inlet) return console.refuse("--machine", inlet.error());
  asked.inlet = inlet.value();
  if (const Refusal refusal = readTurning(options, console, asked)) return *refusal;
  if (const Refusal refusal = readWay(options, console, asked)) return *refusal;
  return reply(options, console, startQuestionOf(asked, console.book.say("word.what_is_on")));
}

}  // namespace

Work declareStart(CLI::App& command, Work& /*work*/) {
  const auto options = std::make_shared<StartOptions>();
  command.add_option("SITE", options->site, "Site file with the hookup");
  command.add_option("--hookup", options->hookup, "Its id: H03");
  command.add_option("--machine", options->machine, "Plate amps, kind, own cord:\n\"15A induction 14AWG/50ft\"");
  command.add_option("--kind", options->kind, "burnisher, slow-machine or air-mover");
  command.add_option("--breaker", options->breaker, "Of the outlet: 20A");
  command.add_option("--run", options->run, "Panel to outlet: 60ft/12AWG");
  command.add_option("--cord", options->cord, "Extension between: \"SJTW 12/3 50ft\"");
  command.add_option("--carrying", options->carrying, "What is on there already: 5A");
  command.add_option("--inertia", options->inertia, "Of all that turns, in kg m², at its speed: 0.1");
  command.add_option("--speed", options->speed, "Turns a minute: 175");
  command.add_flag("--json", options->json, "One line of JSON");
  return [options](const Console& console) { return runStart(*options, console); };
}

}  // namespace cordreach::console
