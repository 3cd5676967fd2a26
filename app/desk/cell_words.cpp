// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/cell_words.h"

#include <QStringList>

#include "desk/cord_words.h"
#include "rules/rule_table.h"
#include "shell/say.h"
#include "text/quantity_text.h"
#include "text/severity_text.h"

namespace cordreach::app {

namespace {

using planning::CordCandidate;
using rules::Severity;

constexpr double kTold = 1.5;  // from here on a share is told as a multiple, below as a percentage

QString capital(QString words) {
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return words;
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

// Of a sound cord the limit that is nearest; of another the one that its finding is about, if it is one of the five.
const planning::LimitUse* limitToTell(const CordCandidate& candidate, std::optional<planning::CordLimit> about) {
  const planning::LimitUse* use = planning::nearest(candidate.limits);
  if (!about) return use;
  for (const planning::LimitUse& one : candidate.limits) {
    if (one.limit == *about) use = &one;
  }
  return use;
}

QString shareText(const text::Phrasebook& book, const planning::LimitUse& use, const QString& limit) {
  if (!use.used) return say(book, "desk.cell.beyond");
  if (*use.used >= kTold)
    return say(book, "desk.cell.times", {{"times", text::numberText(book.locale(), *use.used, 1)}});
  return say(book, "desk.cell.used", {{"limit", limit.toStdString()}, {"used_percent", 100.0 * *use.used}});
}

// Fills head and figure; what is spoken of them.
QStringList tellCandidate(const text::Phrasebook& book, const CordCandidate& candidate, CellWords& words) {
  words.severity = candidate.verdict;
  const bool sound = candidate.verdict < Severity::Caution;
  const std::optional<planning::CordLimit> about = planning::limitOfFinding(candidate.limit);
  const planning::LimitUse* use = limitToTell(candidate, sound ? std::nullopt : about);
  const QString limit = use == nullptr ? QString() : say(book, "desk.limit." + std::string(nameOf(use->limit)));
  const QString why = candidate.limit.empty() ? QString() : say(book, "short." + candidate.limit);
  QStringList spoken{QString::fromStdString(text::signalWord(book, candidate.verdict))};
  if (sound) {
    words.head = spoken.first();
  } else {
    words.head = about ? limit : why;
  }
  if (use != nullptr && (sound || about)) words.figure = shareText(book, *use, limit);
  if (!why.isEmpty()) spoken << why;
  if (!words.figure.isEmpty()) spoken << words.figure;
  return spoken;
}

}  // namespace

QString candidateName(const text::Phrasebook& book, const CordCandidate& candidate) {
  return say(book, "cord.name",
             {{"label", candidate.label},
              {"type", candidate.label.empty() ? candidate.type : std::string()},
              {"size", gaugeText(book, candidate.size).toStdString()},
              {"length_m", candidate.length.si()}});
}

QString candidateLine(const text::Phrasebook& book, const CordCandidate& candidate) {
  if (candidate.plannedElsewhere && candidate.verdict < Severity::Caution) return say(book, "cord.elsewhere");
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
  QStringList spoken{gaugeText(book, grid.sizes.at(cell.row)) + ", " + lengthText(book, grid.lengths.at(cell.column))};
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
    spoken << tellCandidate(book, *candidate, words);
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

}  // namespace cordreach::app
