// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/cord_words.h"

#include <cmath>

#include "panels/names.h"
#include "rules/rule_table.h"
#include "shell/say.h"
#include "site/file_words.h"
#include "site/queries.h"
#include "study/assumptions.h"
#include "text/quantity_text.h"
#include "text/severity_text.h"

namespace cordreach::app {

namespace {

using planning::CordAdvice;
using planning::CordCandidate;
using rules::Severity;

constexpr double kTold = 1.5;  // from here on a share is told as a multiple, below as a percentage

std::string sizeName(const text::Phrasebook& book, const units::WireSize& size) {
  const auto gauge = size.awgNumber();
  return gauge ? text::quantityText(book, "gauge_awg", *gauge)
               : text::quantityText(book, "size_mm2", size.metricMm2().value_or(0.0));
}

QString capital(QString words) {
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return words;
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

// The rule that holds the same limit; empty: none does, the limit is our own.
std::string_view ruleBehind(planning::CordLimit limit) {
  switch (limit) {
    case planning::CordLimit::Amps:
      return "cord.over_tag";
    case planning::CordLimit::Volts:
      return "machine.voltage";
    case planning::CordLimit::Heat:
      return "cord.conductor_over_rating";
    case planning::CordLimit::Start:
    case planning::CordLimit::Clearing:
      break;
  }
  return {};
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
  words.after = say(book, "desk.instead.after", arguments);
}

}  // namespace

QString lengthText(const text::Phrasebook& book, units::Length length) {
  return QString::fromStdString(text::quantityText(book, "length_m", length.si()));
}

QString gaugeText(const text::Phrasebook& book, const units::WireSize& size) {
  return QString::fromStdString(sizeName(book, size));
}

QString machineText(const CordModel& model) {
  const AskedMachine machine = machineOf(model.inputs(), model.site(), model.book());
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
  const units::Length distance = model.inputs().distance;
  const double feet = distance.in(units::foot);
  const bool us = model.book().locale().units == text::UnitSystem::Us;
  const double shown = us ? feet : distance.si();
  return say(
      model.book(), us ? "desk.feet" : "desk.metres",
      {{"count", text::numberText(model.book().locale(), shown, std::abs(shown - std::round(shown)) < 0.05 ? 0 : 1)}});
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
  const AskedMachine machine = machineOf(model.inputs(), model.site(), model.book());
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
    if (isBad(advice)) {
      words.order = say(book, "desk.other_outlet");
      sayInstead(model, *answer, words);
    } else {
      words.order = thumbText(model);
    }
  }
  const QString find = findOutText(model, advice);
  if (!find.isEmpty()) words.reason += ' ' + find;
  return words;
}

QString candidateName(const text::Phrasebook& book, const CordCandidate& candidate) {
  return say(book, "cord.name",
             {{"label", candidate.label},
              {"type", candidate.label.empty() ? candidate.type : std::string()},
              {"size", sizeName(book, candidate.size)},
              {"length_m", candidate.length.si()}});
}

QString candidateLine(const text::Phrasebook& book, const CordCandidate& candidate) {
  if (!candidate.limit.empty()) return say(book, "short." + candidate.limit);
  const planning::LimitUse* nearest = planning::nearest(candidate.limits);
  if (nearest == nullptr || !nearest->used) return {};
  return say(book, "desk.cell.used",
             {{"limit", book.say("desk.limit." + std::string(nameOf(nearest->limit)))},
              {"used_percent", 100.0 * *nearest->used}});
}

CellWords cellWords(const CordModel& model, const CordCell& cell) {
  const text::Phrasebook& book = model.book();
  const CordGrid& grid = model.grid();
  CellWords words;
  const QString name = gaugeText(book, grid.sizes.at(cell.row)) + ", " + lengthText(book, grid.lengths.at(cell.column));
  QStringList spoken{name};
  const CordCandidate* candidate = grid.at(cell.row, cell.column);
  if (model.isTooShort(cell.column)) {
    words.tooShort = true;
    words.head = say(book, "desk.cell.too_short");
    spoken << words.head;
  } else if (candidate == nullptr) {
    words.empty = true;
    words.head = QStringLiteral("…");
    spoken << say(book, "window.verdict.working");
  } else {
    words.severity = candidate->verdict;
    const bool sound = candidate->verdict < Severity::Caution;
    const auto about = planning::limitOfFinding(candidate->limit);
    const planning::LimitUse* use = planning::nearest(candidate->limits);
    for (const planning::LimitUse& one : candidate->limits) {
      if (!sound && about && one.limit == *about) use = &one;
    }
    const QString limit = use == nullptr ? QString() : say(book, "desk.limit." + std::string(nameOf(use->limit)));
    const QString signal = QString::fromStdString(text::signalWord(book, candidate->verdict));
    const QString why = candidate->limit.empty() ? QString() : say(book, "short." + candidate->limit);
    words.head = sound ? signal : about ? limit : why;
    if (use != nullptr && (sound || about)) {
      words.figure =
          !use->used ? say(book, "desk.cell.beyond")
          : *use->used >= kTold
              ? say(book, "desk.cell.times", {{"times", text::numberText(book.locale(), *use->used, 1)}})
              : say(book, "desk.cell.used", {{"limit", limit.toStdString()}, {"used_percent", 100.0 * *use->used}});
    }
    spoken << signal;
    if (!why.isEmpty()) spoken << why;
    if (!words.figure.isEmpty()) spoken << words.figure;
  }
  for (const std::string& label : model.cartIn(cell)) spoken << say(book, "panel.name.cord", {{"name", label}});
  if (model.chosenCell() == cell) spoken << say(book, "desk.cell.chosen");
  words.spoken = spoken.join(", ");
  return words;
}

LimitWords limitWords(const text::Phrasebook& book, const planning::LimitUse& use) {
  const std::string code = "desk.limit." + std::string(nameOf(use.limit));
  const std::string_view rule = ruleBehind(use.limit);
  const QString source =
      rule.empty() ? say(book, code + ".source") : QString::fromStdString(rules::ruleOf(rule).source.text);
  return {capital(say(book, code + ".name")), say(book, code + ".value", use.arguments), source, use.used};
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
