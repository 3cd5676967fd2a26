// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/cord_words.h"

#include <cmath>

#include "desk/cell_words.h"
#include "panels/names.h"
#include "planning/outlet_choice.h"
#include "shell/say.h"
#include "site/file_words.h"
#include "site/queries.h"
#include "study/assumptions.h"
#include "text/circuit_text.h"
#include "text/quantity_text.h"
#include "text/severity_text.h"

namespace cordreach::app {

namespace {

using planning::CordAdvice;
using planning::CordCandidate;
using rules::Severity;

constexpr std::size_t kMostUsers = 3;  // of the circuit, told by name

std::string sizeName(const text::Phrasebook& book, const units::WireSize& size) {
  const auto gauge = size.awgNumber();
  return gauge ? text::quantityText(book, "gauge_awg", *gauge)
               : text::quantityText(book, "size_mm2", size.metricMm2().value_or(0.0));
}

std::optional<base::Argument> argumentOf(const base::Arguments& arguments, const std::string& name) {
  for (const base::Argument& one : arguments) {
    if (one.name == name) return one;
  }
  return std::nullopt;
}

std::string shortOf(const CordAdvice& advice) {
  const auto limit = argumentOf(advice.arguments, "limit");
  const std::string* code = limit ? std::get_if<std::string>(&limit->value) : nullptr;
  return code == nullptr ? std::string() : *code;
}

bool isBad(const CordAdvice& advice) {
  return advice.verdict >= Severity::Caution || (advice.extensionNeeded && !advice.choice);
}

QString findOutText(const CordModel& model, const CordAdvice& advice) {
  if (advice.findOut.empty()) return {};
  base::Arguments arguments = advice.findOutArguments;
  return say(model.book(), advice.findOut, arguments);
}

base::Arguments choiceArguments(const CordModel& model, const CordCandidate& choice, const CordAdvice& advice) {
  base::Arguments arguments = advice.arguments;
  const text::Phrasebook& book = model.book();
  arguments.push_back({"choice", candidateName(book, choice).toStdString()});
  arguments.push_back({"choice_v", choice.voltage.likely.si()});
  if (choice.conductor) arguments.push_back({"choice_c", choice.conductor->likely.celsius()});
  return arguments;
}

void sayChoice(const CordModel& model, const CordAnswer& answer, VerdictWords& words) {
  const text::Phrasebook& book = model.book();
  const CordCandidate& choice = answer.advice.candidates[*answer.advice.choice];
  base::Arguments arguments = choiceArguments(model, choice, answer.advice);
  if (!choice.label.empty()) arguments.push_back({"label", choice.label});
  arguments.push_back({"size_words", sizeName(book, choice.size)});
  arguments.push_back({"stock_m", choice.length.si()});
  words.sentence = say(book, "desk.take", arguments);
  words.reason = say(book, "desk.take.reason", arguments);
  words.after = thumbText(model);
  words.order = words.after;
  if (model.inputs().cordsBy == CordsBy::Cart && model.inputs().machineBy == MachineBy::Site &&
      model.inputs().outletBy == OutletBy::Site) {
    words.button = say(book, "desk.use", arguments);
  }
}

void sayInstead(const CordModel& model, const CordAnswer& answer, VerdictWords& words) {
  if (!answer.instead) return;
  const text::Phrasebook& book = model.book();
  const site::Outlet& outlet = answer.asked.site->at<site::Outlet>(answer.instead->at.outlet);
  const CordAdvice& there = answer.instead->advice;
  base::Arguments arguments{{"outlet", outletName(outlet)}, {"far_m", answer.instead->distance.si()}};
  if (there.choice) {
    arguments.push_back({"choice", candidateName(book, there.candidates[*there.choice]).toStdString()});
  }
  words.button = say(book, "desk.instead", arguments);
  words.after = say(book, "desk.instead.after", arguments) + ". " + thumbText(model);
}

}  // namespace

QString lengthText(const text::Phrasebook& book, units::Length length) {
  return QString::fromStdString(text::quantityText(book, "length_m", length.si()));
}

QString gaugeText(const text::Phrasebook& book, const units::WireSize& size) {
  return QString::fromStdString(sizeName(book, size));
}

QString machineText(const CordModel& model) {
  const planning::CordQuestion machine = machineOf(model.inputs(), model.site(), model.book());
  base::Arguments arguments{{"machine", machine.name}};
  if (model.inputs().machineBy == MachineBy::Plate) {
    const std::string kind(site::fileWord(machine.inlet.loadClass));
    arguments.front() = {"machine",
                         model.book().say("desk.plate", {{"kind", model.book().say("field.class." + kind)}})};
  }
  const double plateA = study::plateOf(machine.inlet).in(units::ampere);
  const std::string amps =
      text::quantityText(model.book(), "plate_a", plateA, {.decimal = plateA != std::floor(plateA)});
  arguments.push_back({"amps", amps});
  return say(model.book(), "desk.machine", arguments);
}

QString distanceText(const CordModel& model) {
  const text::Locale& locale = model.book().locale();
  const bool us = locale.units == text::UnitSystem::Us;
  const auto shown = [us](units::Length length) { return us ? length.in(units::foot) : length.si(); };
  const double distance = shown(model.inputs().distance);
  // What was followed is not known to a tenth of a foot.
  const bool whole = std::abs(distance - std::round(distance)) < 0.05 || (us && model.walk());
  return say(model.book(), us ? "desk.feet" : "desk.metres",
             {{"count", text::numberText(locale, distance, whole ? 0 : 1)},
              {"slack", text::numberText(locale, shown(planning::kSlack), us ? 0 : 1)}});
}

QString outletText(const CordModel& model) {
  const CordInputs& inputs = model.inputs();
  base::Arguments arguments;
  if (inputs.outletBy == OutletBy::Site && inputs.outlet) {
    const site::Outlet& outlet = model.site().at<site::Outlet>(inputs.outlet->outlet);
    arguments.push_back({"outlet", outlet.label.empty() ? outlet.id.text() : outlet.label});
    if (outlet.contacts.size() > 1) arguments.push_back({"contact", contactName(model.book(), inputs.outlet->contact)});
    const site::Circuit* circuit = site::circuitOf(model.site(), *inputs.outlet);
    if (circuit != nullptr && circuit->rating) arguments.push_back({"rating_a", circuit->rating->value.si()});
    return say(model.book(), "desk.outlet.site", arguments);
  }
  if (inputs.breaker) arguments.push_back({"rating_a", inputs.breaker->si()});
  if (!inputs.receptacle.empty()) arguments.push_back({"face", model.book().say("desk.face." + inputs.receptacle)});
  if (inputs.run) arguments.push_back({"run_m", inputs.run->value.si()});
  return say(model.book(), "desk.outlet.hand", arguments);
}

QString cordsText(const CordModel& model) {
  const CordInputs& inputs = model.inputs();
  if (inputs.cordsBy == CordsBy::Stock) return say(model.book(), "desk.cords.stock");
  if (inputs.cordsBy == CordsBy::Jacket) {
    base::Arguments arguments;
    if (inputs.jacket.size) arguments.push_back({"size_words", sizeName(model.book(), inputs.jacket.size->value)});
    if (inputs.jacket.length) arguments.push_back({"length_m", inputs.jacket.length->value.si()});
    return say(model.book(), "desk.cords.jacket", arguments);
  }
  double count = 0;
  for (const site::Cord& cord : model.site().all<site::Cord>()) count += cord.outOfService ? 0 : 1;
  return say(model.book(), "desk.cords.cart",
             {{"number", count == 1 ? "one" : "many"}, {"count", text::numberText(model.book().locale(), count, 0)}});
}

QString slackText(const CordModel& model) {
  const planning::CordQuestion machine = machineOf(model.inputs(), model.site(), model.book());
  planning::CordQuestion question;
  question.distance = model.inputs().distance;
  const units::Length needed = planning::neededFor(question);
  const units::Length own = study::lengthOf(machine.inlet.cord).value;
  base::Arguments arguments{{"distance_m", question.distance.si()},
                            {"slack_m", (needed - question.distance).si()},
                            {"needed_m", needed.si()},
                            {"own_m", own.si()}};
  if (own < needed) arguments.push_back({"missing_m", (needed - own).si()});
  return say(model.book(), "desk.slack", arguments);
}

QString walkText(const CordModel& model) {
  if (model.inputs().measure != Measure::Plan) return {};
  if (!model.walk()) return say(model.book(), "desk.distance.no_plan");
  const auto code = [&] {
    switch (model.walk()->by) {
      case site::WalkBy::Walls:
        return "desk.walk.walls";
      case site::WalkBy::Corridors:
        return "desk.walk.corridors";
      case site::WalkBy::Undrawn:
        return "desk.walk.undrawn";
      case site::WalkBy::NoWay:
        break;
    }
    return "desk.walk.no_way";
  };
  return say(model.book(), code(), {{"distance_m", model.walk()->length.si()}});
}

VerdictWords verdictWords(const CordModel& model) {
  VerdictWords words;
  const CordAnswer* answer = model.answer();
  if (answer == nullptr) return words;
  const text::Phrasebook& book = model.book();
  const CordAdvice& advice = answer->advice;
  words.severity = isBad(advice) ? std::max(advice.verdict, Severity::Caution) : advice.verdict;
  words.signal = QString::fromStdString(text::signalWord(book, words.severity));
  words.concerns = say(book, "desk.concerns",
                       {{"machine", machineText(model).toStdString()}, {"outlet", outletText(model).toStdString()}});
  if (advice.choice) {
    sayChoice(model, *answer, words);
  } else {
    words.sentence = say(book, "desk." + advice.reason);
    base::Arguments arguments = advice.arguments;
    if (const std::string code = shortOf(advice); !code.empty())
      arguments.push_back({"why", book.say("short." + code)});
    words.reason = say(book, "desk." + advice.reason + ".reason", arguments);
    words.order = thumbText(model);
    if (isBad(advice)) {
      words.order = say(book, "desk.other_outlet") + ". " + words.order;
      sayInstead(model, *answer, words);
    }
  }
  if (advice.takenBy) words.reason += ' ' + say(book, "cord.taken", {{"name", *advice.takenBy}});
  const QString find = findOutText(model, advice);
  if (!find.isEmpty()) words.reason += ' ' + find;
  if (!advice.alsoOn.empty()) {
    words.reason += ' ' + QString::fromStdString(text::alsoOnText(book, advice.alsoOn, kMostUsers));
  }
  return words;
}

QString thumbText(const CordModel& model) {
  const CordAnswer* answer = model.answer();
  if (answer == nullptr) return {};
  const text::Phrasebook& book = model.book();
  const CordAdvice& advice = answer->advice;
  base::Arguments arguments{{"thumb", sizeName(book, advice.ruleOfThumb)},
                            {"own", sizeName(book, study::sizeOf(answer->asked.question.inlet.cord))}};
  if (advice.choice) {
    const bool stricter = advice.candidates[*advice.choice].size.area() > advice.ruleOfThumb.area() * 1.05;
    arguments.push_back({"agrees", stricter ? "no" : "yes"});
  }
  return say(book, "desk.thumb", arguments);
}

}  // namespace cordreach::app
