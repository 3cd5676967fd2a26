// SPDX-License-Identifier: GPL-3.0-or-later
#include "console/heat_output.h"

#include <algorithm>
#include <array>

#include "console/json_writer.h"
#include "console/page.h"
#include "physics/touch_limits.h"
#include "study/branch_heat.h"
#include "text/quantity_text.h"

namespace cordreach::console {

namespace {

using rules::Severity;
using Band = std::optional<study::Band<double>>;

constexpr std::size_t kPageRows = 8;

std::optional<double> secondsOf(const std::optional<units::Duration>& time) {
  return time ? std::optional<double>(time->si()) : std::nullopt;
}

bool isOver(const Band& band, double limit) { return band && band->likely > limit; }

void putTemperatures(JsonWriter& json, const HeatPoint& point) {
  json.number("conductor_c", point.conductorC ? std::optional(point.conductorC->likely) : std::nullopt);
  json.number("surface_c", point.surfaceC ? std::optional(point.surfaceC->likely) : std::nullopt);
  json.number("conductor_low_c", point.conductorC ? std::optional(point.conductorC->low) : std::nullopt);
  json.number("conductor_high_c", point.conductorC ? std::optional(point.conductorC->high) : std::nullopt);
  json.number("surface_low_c", point.surfaceC ? std::optional(point.surfaceC->low) : std::nullopt);
  json.number("surface_high_c", point.surfaceC ? std::optional(point.surfaceC->high) : std::nullopt);
}

base::Arguments argumentsOf(const HeatQuestion& question, const HeatAnswer& answer) {
  base::Arguments arguments{{"cord", question.cord.legend},
                            {"length_m", question.cord.length->value.si()},
                            {"current_a", question.amps.si()},
                            {"air_c", question.air.celsius()},
                            {"run_s", question.run.si()},
                            {"limit_c", answer.limitC},
                            {"touch_c", physics::jacketTooHotToHold().value.celsius()}};
  constexpr std::array kLayings{"straight", "floor", "carpet", "covered", "coiled", "reel"};
  arguments.push_back({"laying", kLayings.at(static_cast<std::size_t>(question.laying.laying))});
  if (question.laying.turns > 0.0) arguments.push_back({"turns", question.laying.turns});
  if (question.laying.affected) arguments.push_back({"affected_m", question.laying.affected->si()});
  if (answer.rated) arguments.push_back({"rated_a", answer.rated->si()});
  if (answer.timeToLimit) arguments.push_back({"limit_reached_s", answer.timeToLimit->si()});
  if (answer.lossScale) {
    const site::JacketReading& reading = *question.cord.jacketReading;
    arguments.push_back({"read_c", reading.surface.celsius()});
    arguments.push_back({"read_a", reading.current.si()});
    arguments.push_back({"read_air_c", reading.air.celsius()});
    arguments.push_back({"loss_percent", 100.0 * *answer.lossScale});
    if (study::isAtEnd(*answer.lossScale)) arguments.push_back({"doubtful", "yes"});
  }
  const HeatPoint& end = answer.last();
  if (end.conductorC) {
    arguments.push_back({"conductor_c", end.conductorC->likely});
    arguments.push_back({"conductor_low_c", end.conductorC->low});
    arguments.push_back({"conductor_high_c", end.conductorC->high});
    arguments.push_back({"surface_c", end.surfaceC->likely});
  }
  return arguments;
}

std::string bandText(const text::Phrasebook& book, const Band& band) {
  if (!band) return book.say("heat.beyond");
  const auto degrees = [&](double celsius) { return text::quantityText(book, "value_c", celsius); };
  return degrees(band->likely) + " (" + book.say("heat.band", {{"low_c", band->low}, {"high_c", band->high}}) + ")";
}

}  // namespace

HeatVerdict heatVerdict(const HeatQuestion& question, const HeatAnswer& answer) {
  const HeatPoint& end = answer.last();
  const double touchC = physics::jacketTooHotToHold().value.celsius();
  if (!end.conductorC) return {Severity::Danger, "heat.verdict.beyond"};
  if (isOver(end.conductorC, answer.limitC)) return {Severity::Warning, "heat.verdict.conductor"};
  if (isOver(end.surfaceC, touchC)) return {Severity::Warning, "heat.verdict.surface"};
  if (answer.rated && question.amps > *answer.rated) return {Severity::Warning, "heat.verdict.rating"};
  const bool later = !answer.steady || isOver(answer.steady->conductorC, answer.limitC);
  if (later) return {Severity::Notice, "heat.verdict.later"};
  if (end.conductorC->high > answer.limitC) return {Severity::Notice, "heat.verdict.perhaps"};
  return {Severity::Ok, "heat.verdict.ok"};
}

std::string heatJson(const HeatAnswer& answer) {
  JsonWriter json;
  json.openObject();
  if (answer.steady) {
    json.openObject("steady");
    putTemperatures(json, *answer.steady);
    json.closeObject();
  } else {
    json.null("steady");
  }
  json.truth("beyond_model", !answer.steady);
  json.number("limit_c", answer.limitC);
  json.number("time_to_limit_s", secondsOf(answer.timeToLimit));
  json.number("time_to_limit_low_s", secondsOf(answer.timeToLimitEarly));
  json.number("time_to_limit_high_s", secondsOf(answer.timeToLimitLate));
  if (answer.lossScale) json.number("loss_percent", 100.0 * *answer.lossScale);
  json.openArray("series");
  for (const HeatPoint& point : answer.series) {
    json.openObject().number("time_s", point.time.si());
    putTemperatures(json, point);
    json.closeObject();
  }
  return json.closeArray().closeObject().line();
}

std::string heatCsv(const HeatAnswer& answer) {
  std::string csv = "time_s,conductor_c,surface_c,conductor_low_c,conductor_high_c,surface_low_c,surface_high_c\n";
  for (const HeatPoint& point : answer.series) {
    csv += jsonNumber(point.time.si());
    const Band& conductor = point.conductorC;
    const Band& surface = point.surfaceC;
    // Beyond the model there is no figure, so the cells stay empty.
    for (const auto value : {conductor ? &conductor->likely : nullptr, surface ? &surface->likely : nullptr,
                             conductor ? &conductor->low : nullptr, conductor ? &conductor->high : nullptr,
                             surface ? &surface->low : nullptr, surface ? &surface->high : nullptr}) {
      csv += "," + (value != nullptr ? jsonNumber(*value) : std::string{});
    }
    csv += "\n";
  }
  return csv;
}

std::string heatPage(const HeatQuestion& question, const HeatAnswer& answer, const text::Phrasebook& book, bool color) {
  const base::Arguments arguments = argumentsOf(question, answer);
  Page page(book, color);
  page.heading(book.say("heat.heading", arguments));
  const HeatVerdict verdict = heatVerdict(question, answer);
  page.verdict(verdict.severity, book.say(verdict.phrase, arguments));
  page.gap();
  const std::size_t count = answer.series.size();
  std::vector<std::vector<std::string>> rows;
  for (std::size_t i = 0; i < std::min(count, kPageRows); ++i) {
    const HeatPoint& point = answer.series[i * (count - 1) / (std::min(count, kPageRows) - 1)];
    rows.push_back({"  " + text::quantityText(book, "time_s", point.time.si()), bandText(book, point.conductorC),
                    bandText(book, point.surfaceC)});
  }
  const HeatPoint settled = answer.steady.value_or(HeatPoint{});
  rows.push_back(
      {"  " + book.say("heat.settled"), bandText(book, settled.conductorC), bandText(book, settled.surfaceC)});
  page.table({{"  " + book.say("heat.after")}, {book.say("heat.inside")}, {book.say("heat.outside")}}, rows);
  page.gap();
  if (answer.lossScale) page.paragraph(book.say("heat.measured", arguments));
  page.paragraph(book.say("heat.breaker"));
  return page.finished();
}

}  // namespace cordreach::console
