// SPDX-License-Identifier: GPL-3.0-or-later
// Metric sizes have no gauge: theirs is null, and their square millimetres stand beside it.
#include "console/cord_output.h"

#include "console/json_writer.h"
#include "console/page.h"
#include "text/circuit_text.h"
#include "text/quantity_text.h"
#include "text/severity_text.h"

namespace cordreach::console {

namespace {

using planning::CordAdvice;
using planning::CordCandidate;

void putSize(JsonWriter& json, const CordCandidate& candidate) {
  const auto gauge = candidate.size.awgNumber();
  json.number("gauge_awg", gauge ? std::optional<double>(*gauge) : std::nullopt);
  if (!gauge) json.number("size_mm2", candidate.size.metricMm2());
  json.number("length_m", candidate.length.si()).text("type", candidate.type);
  if (candidate.cord) json.text("id", candidate.cord->text());
}

void putUser(JsonWriter& json, const planning::CircuitUser& user) {
  json.openObject().text("kind", user.hookup ? "hookup" : "fixed_load");
  json.text("id", user.hookup ? user.hookup->text() : user.load->text()).text("name", user.name);
  json.number("plate_a", user.plate.si());
  json.number("from_s", user.hours ? std::optional(user.hours->from.si()) : std::nullopt);
  json.number("until_s", user.hours ? std::optional(user.hours->until.si()) : std::nullopt).closeObject();
}

std::string reasonsOf(const CordCandidate& candidate, const text::Phrasebook& book) {
  std::string reasons;
  for (const rules::Reason& reason : candidate.why) {
    reasons += (reasons.empty() ? "" : "; ") + book.say("reason." + reason.code, reason.arguments);
  }
  return reasons;
}

void putCandidate(JsonWriter& json, const CordCandidate& candidate, const text::Phrasebook& book) {
  json.openObject();
  putSize(json, candidate);
  if (candidate.cord) json.truth("planned_elsewhere", candidate.plannedElsewhere);
  json.band("voltage_v", study::Band<double>{candidate.voltage.likely.si(), candidate.voltage.low.si(),
                                             candidate.voltage.high.si()});
  json.band("drop_percent", candidate.dropPercent);
  std::optional<study::Band<double>> conductor;
  if (candidate.conductor) {
    conductor = {candidate.conductor->likely.celsius(), candidate.conductor->low.celsius(),
                 candidate.conductor->high.celsius()};
  }
  json.band("conductor_c", conductor);
  json.text("verdict", text::severityCode(candidate.verdict));
  if (candidate.limit.empty()) {
    json.null("limit");
  } else {
    json.text("limit", candidate.limit);
  }
  json.openArray("limits");
  for (const planning::LimitUse& one : candidate.limits) {
    json.openObject().text("limit", planning::nameOf(one.limit));
    json.number("used_percent", one.used ? std::optional(100.0 * *one.used) : std::nullopt).closeObject();
  }
  json.closeArray();
  json.text("why", text::forConsole(reasonsOf(candidate, book))).closeObject();
}

std::string sizeText(const CordCandidate& candidate, const text::Phrasebook& book) {
  const auto gauge = candidate.size.awgNumber();
  return gauge ? text::quantityText(book, "gauge_awg", *gauge)
               : text::quantityText(book, "size_mm2", candidate.size.metricMm2().value_or(0.0));
}

std::string nameOf(const CordCandidate& candidate, const text::Phrasebook& book) {
  return book.say("cord.name", {{"label", candidate.label},
                                {"type", candidate.type},
                                {"size", sizeText(candidate, book)},
                                {"length_m", candidate.length.si()}});
}

base::Arguments argumentsOf(const CordAdvice& advice, const text::Phrasebook& book) {
  base::Arguments arguments = advice.arguments;
  if (advice.choice) {
    const CordCandidate& choice = advice.candidates[*advice.choice];
    arguments.push_back({"choice", nameOf(choice, book)});
    arguments.push_back({"choice_v", choice.voltage.likely.si()});
    if (choice.conductor) arguments.push_back({"choice_c", choice.conductor->likely.celsius()});
  }
  return arguments;
}

std::vector<std::string> rowOf(const CordCandidate& candidate, const text::Phrasebook& book) {
  return {"  " + nameOf(candidate, book), text::quantityText(book, "voltage_v", candidate.voltage.likely.si()),
          text::quantityText(book, "drop_percent", candidate.dropPercent.likely),
          candidate.conductor ? text::quantityText(book, "conductor_c", candidate.conductor->likely.celsius())
                              : book.say("heat.beyond"),
          text::signalWord(book, candidate.verdict) +
              (candidate.plannedElsewhere && candidate.verdict < rules::Severity::Caution
                   ? ": " + book.say("cord.elsewhere")
               : candidate.limit.empty() ? std::string{}
                                         : ": " + book.say("short." + candidate.limit))};
}

}  // namespace

std::string cordJson(const CordAdvice& advice, const text::Phrasebook& book) {
  JsonWriter json;
  json.openObject().truth("extension_needed", advice.extensionNeeded);
  if (advice.choice) {
    json.openObject("choice");
    putSize(json, advice.candidates[*advice.choice]);
    json.closeObject();
  } else {
    json.null("choice");
  }
  json.text("verdict", text::severityCode(advice.verdict));
  json.text("reason", text::forConsole(book.say(advice.reason, argumentsOf(advice, book))));
  if (advice.findOut.empty()) {
    json.null("find_out");
  } else {
    json.text("find_out", text::forConsole(book.say(advice.findOut, advice.findOutArguments)));
  }
  json.openArray("also_on");
  for (const planning::CircuitUser& user : advice.alsoOn) putUser(json, user);
  json.closeArray();
  if (advice.takenBy) {
    json.text("taken_by", *advice.takenBy);
  } else {
    json.null("taken_by");
  }
  json.openArray("candidates");
  for (const CordCandidate& candidate : advice.candidates) putCandidate(json, candidate, book);
  return json.closeArray().closeObject().line();
}

std::string cordPage(const CordAdvice& advice, const text::Phrasebook& book, bool color) {
  Page page(book, color);
  page.verdict(advice.verdict, book.say(advice.reason, argumentsOf(advice, book)));
  if (!advice.findOut.empty()) page.paragraph(book.say(advice.findOut, advice.findOutArguments));
  if (advice.takenBy) page.paragraph(book.say("cord.taken", {{"name", *advice.takenBy}}));
  const std::string alsoOn = text::alsoOnText(book, advice.alsoOn, advice.alsoOn.size());
  if (!alsoOn.empty()) page.paragraph(alsoOn);
  if (!advice.candidates.empty()) {
    page.gap();
    std::vector<std::vector<std::string>> rows;
    for (const CordCandidate& candidate : advice.candidates) rows.push_back(rowOf(candidate, book));
    using text::Align;
    page.table({{"  " + book.say("cord.column.cord")},
                {book.say("cord.column.voltage"), Align::Right},
                {book.say("cord.column.drop"), Align::Right},
                {book.say("cord.column.heat"), Align::Right},
                {book.say("cord.column.verdict")}},
               rows);
  }
  return page.finished();
}

}  // namespace cordreach::console
