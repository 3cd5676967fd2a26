// SPDX-License-Identifier: GPL-3.0-or-later
// The three curves in numbers; in words the likely one first, and never a trip time as permission.
#include "console/verb_trip.h"

#include <CLI/CLI.hpp>
#include <limits>
#include <memory>

#include "console/console.h"
#include "console/json_writer.h"
#include "console/page.h"
#include "physics/breaker_trip.h"
#include "text/quantity_text.h"
#include "units/parse.h"

namespace cordreach::console {

namespace {

// Own: makers give ratings by air from about -30 to 70 °C; outside of that the replica's bimetal is a guess.
constexpr units::Temperature kColdestPanel = units::Temperature::fromCelsius(-30.0);
constexpr units::Temperature kHottestPanel = units::Temperature::fromCelsius(70.0);

struct TripOptions {
  std::string breaker;
  std::string amps;
  std::string carrying;
  std::string ambient;
  bool json = false;
};

struct TripQuestion {
  physics::Breaker breaker;
  units::Current amps;
  units::Current carrying;
  units::Temperature air = physics::defaultBreakerAir();
};

std::optional<double> secondsOf(const std::optional<units::Duration>& time) {
  return time ? std::optional<double>(time->si()) : std::nullopt;
}

std::string jsonOf(const physics::TripTimes& times) {
  JsonWriter json;
  json.openObject();
  json.number("earliest_s", secondsOf(times.earliest));
  json.number("likely_s", secondsOf(times.likely));
  json.number("latest_s", secondsOf(times.latest));
  return json.closeObject().line();
}

// Absent numbers choose the other words of the phrases.
base::Arguments argumentsOf(const TripQuestion& question, const physics::TripTimes& times) {
  base::Arguments arguments{
      {"rating_a", question.breaker.rating.si()}, {"current_a", question.amps.si()}, {"air_c", question.air.celsius()}};
  if (question.carrying > 0.0 * units::ampere) arguments.push_back({"carrying_a", question.carrying.si()});
  if (times.earliest) arguments.push_back({"earliest_s", times.earliest->si()});
  if (times.likely) arguments.push_back({"likely_s", times.likely->si()});
  if (times.latest) arguments.push_back({"latest_s", times.latest->si()});
  return arguments;
}

struct Verdict {
  rules::Severity severity;
  const char* phrase;
};

// What comes: likely, possible, or nothing, and then whether more flows than the breaker is rated for.
Verdict verdictOf(const TripQuestion& question, const physics::TripTimes& times) {
  if (times.likely) return {rules::Severity::Caution, "trip.likely"};
  if (times.earliest) return {rules::Severity::Notice, "trip.possible"};
  if (question.amps > question.breaker.rating) return {rules::Severity::Notice, "trip.overloaded"};
  return {rules::Severity::Ok, "trip.holds"};
}

std::string pageOf(const TripQuestion& question, const physics::TripTimes& times, const Console& console) {
  const text::Phrasebook& book = console.book;
  const base::Arguments arguments = argumentsOf(question, times);
  Page page(book, console.color);
  page.heading(book.say("trip.heading", arguments));
  const Verdict verdict = verdictOf(question, times);
  page.verdict(verdict.severity, book.say(verdict.phrase, arguments));
  page.gap();
  const auto row = [&](const char* name, const std::optional<units::Duration>& time) {
    return std::vector<std::string>{"  " + book.say(name),
                                    time ? text::quantityText(book, "time_s", time->si()) : book.say("trip.never")};
  };
  page.table(
      {{"  " + book.say("trip.curve")}, {book.say("trip.when")}},
      {row("trip.earliest", times.earliest), row("trip.middle", times.likely), row("trip.latest", times.latest)});
  return page.finished();
}

int runTrip(const TripOptions& options, const Console& console) {
  TripQuestion question;
  const base::Result<physics::Breaker> breaker = physics::parseBreaker(options.breaker);
  if (!breaker) return console.refuse("--breaker", breaker.error());
  question.breaker = breaker.value();
  const base::Result<units::Current> amps = units::parseCurrent(options.amps);
  if (!amps) return console.refuse("--amps", amps.error());
  question.amps = amps.value();
  if (!options.carrying.empty()) {
    const base::Result<units::Current> carrying = units::parseCurrent(options.carrying);
    if (!carrying) return console.refuse("--carrying", carrying.error());
    question.carrying = carrying.value();
  }
  if (!options.ambient.empty()) {
    const base::Result<units::Temperature> air = units::parseTemperature(options.ambient);
    if (!air) return console.refuse("--ambient", air.error());
    question.air = air.value();
  }
  if (question.air < kColdestPanel || question.air > kHottestPanel) {
    return console.refuse(
        "--ambient",
        {"console.air", options.ambient, {{"least_c", kColdestPanel.celsius()}, {"most_c", kHottestPanel.celsius()}}});
  }
  const physics::TripTimes times =
      physics::trip(question.breaker, question.amps, question.carrying, physics::BreakerAir::all(question.air));
  const int exit = times.likely ? kUnsound : kSound;
  return console.answer(options.json ? jsonOf(times) : pageOf(question, times, console), exit);
}

}  // namespace

Work declareTrip(CLI::App& command, Work& /*work*/) {
  const auto options = std::make_shared<TripOptions>();
  command.add_option("--breaker", options->breaker, "Its rating: 20A, B16, \"15A fuse\"")->required();
  command.add_option("--amps", options->amps, "What flows: 27A")->required();
  command.add_option("--carrying", options->carrying, "What flowed before: 12A");
  command.add_option("--ambient", options->ambient, "Air at the breaker, 25C if not given");
  command.add_flag("--json", options->json, "One line of JSON");
  return [options](const Console& console) { return runTrip(*options, console); };
}

}  // namespace cordreach::console
