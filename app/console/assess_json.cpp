// SPDX-License-Identifier: GPL-3.0-or-later
// Writes key by key in the order of the contract.
#include "console/assess_json.h"

#include <array>
#include <cmath>

#include "console/json_writer.h"
#include "io/edit_json.h"
#include "rules/judge.h"
#include "site/assigning.h"
#include "text/columns.h"
#include "text/error_text.h"
#include "text/finding_text.h"
#include "text/severity_text.h"

namespace cordreach::console {

namespace {

using study::Band;
using Number = std::optional<double>;

template <class Quantity>
Band<double> si(const Band<Quantity>& band) {
  return {band.likely.si(), band.low.si(), band.high.si()};
}

std::optional<Band<double>> celsius(const std::optional<Band<units::Temperature>>& band) {
  if (!band) return std::nullopt;
  return Band<double>{band->likely.celsius(), band->low.celsius(), band->high.celsius()};
}

Number secondsOf(const std::optional<units::Duration>& time) { return time ? Number(time->si()) : std::nullopt; }

std::string_view kindWord(rules::SubjectKind kind) {
  constexpr std::array<std::string_view, 8> kWords{"hookup",  "machine", "cord", "outlet",
                                                   "circuit", "panel",   "pad",  "fixed_load"};
  return kWords.at(static_cast<std::size_t>(kind));
}

void putTrip(JsonWriter& json, const std::optional<physics::TripTimes>& trip) {
  if (!trip) {
    json.null("trip");
    return;
  }
  json.openObject("trip");
  json.number("earliest_s", secondsOf(trip->earliest));
  json.number("likely_s", secondsOf(trip->likely));
  json.number("latest_s", secondsOf(trip->latest));
  json.closeObject();
}

void putCircuit(JsonWriter& json, const study::CircuitAnswer& circuit, const site::Site& site) {
  const Band<double> current = si(circuit.current);
  std::optional<Band<double>> margin;
  if (circuit.breaker.rating) {
    const double ratingA = circuit.breaker.rating->si();
    margin = Band<double>{ratingA - current.likely, ratingA - current.high, ratingA - current.low};
  }
  json.openObject();
  json.text("id", circuit.id.text());
  json.text("name", site::circuitNumberOf(site, site.at<site::Circuit>(circuit.id)));
  json.number("rating_a", circuit.breaker.rating ? Number(circuit.breaker.rating->si()) : std::nullopt);
  json.band("current_a", current).band("margin_a", margin);
  putTrip(json, circuit.breaker.trip);
  json.closeObject();
}

void putCord(JsonWriter& json, const study::CordAnswer& cord) {
  json.openObject();
  if (cord.id) {
    json.text("id", cord.id->text());
  } else {
    json.null("id");
  }
  json.truth("own", cord.own());
  json.band("conductor_c", celsius(cord.conductor)).band("surface_c", celsius(cord.surface));
  json.number("limit_c", cord.limit.celsius());
  json.closeObject();
}

std::optional<Band<double>> dropPercent(const study::HookupAnswer& hookup) {
  const double nominalV = hookup.nominal.si();
  if (!(nominalV > 0.0)) return std::nullopt;
  const Band<double> drop = si(hookup.drop);
  const auto percent = [&](double dropV) { return 100.0 * dropV / nominalV; };
  return Band<double>{percent(drop.likely), percent(drop.low), percent(drop.high)};
}

void putHookup(JsonWriter& json, const study::HookupAnswer& hookup, const SiteAnswer& answer) {
  json.openObject();
  json.text("id", hookup.id.text()).text("machine", hookup.machine.text()).text("inlet", hookup.inlet);
  if (hookup.outlet) {
    json.text("outlet", hookup.outlet->text()).text("contact", hookup.contact);
  } else {
    json.null("outlet").null("contact");
  }
  json.band("current_a", si(hookup.current)).band("voltage_v", si(hookup.voltage)).band("drop_v", si(hookup.drop));
  json.band("drop_percent", dropPercent(hookup)).band("speed_rpm", hookup.speedRpm);
  json.text("verdict", text::severityCode(rules::verdictOf(hookup.id, answer.findings)));
  json.openArray("cords");
  for (const study::CordAnswer& cord : hookup.cords) putCord(json, cord);
  json.closeArray().closeObject();
}

void putNumbers(JsonWriter& json, std::string_view key, const base::Arguments& arguments) {
  json.openObject(key);
  for (const base::Argument& argument : arguments) {
    if (const double* number = std::get_if<double>(&argument.value)) json.number(argument.name, *number);
  }
  json.closeObject();
}

void putRemedy(JsonWriter& json, const planning::Remedy& remedy, const text::Phrasebook& book) {
  const text::RemedyWords words = text::wordsOf(book, remedy);
  json.openObject().text("code", remedy.code).text("text", text::forConsole(words.order + "."));
  json.raw("edits", io::writeChanges(remedy.edit.changes));
  putNumbers(json, "after", remedy.after);
  json.closeObject();
}

void putFinding(JsonWriter& json, const rules::Finding& finding, const std::vector<planning::Remedy>& remedies,
                const text::Phrasebook& book) {
  const text::FindingWords words = text::wordsOf(book, finding);
  json.openObject().text("code", finding.code).text("severity", text::severityCode(finding.severity));
  json.openArray("subjects");
  for (const rules::Subject& subject : finding.subjects) {
    json.openObject().text("kind", kindWord(subject.kind)).text("id", subject.id).closeObject();
  }
  json.closeArray().text("text", text::forConsole(words.text())).openArray("why");
  for (const text::ReasonWords& reason : words.why) {
    json.openObject().text("text", text::forConsole(reason.text)).number("share", reason.share).closeObject();
  }
  json.closeArray();
  putNumbers(json, "numbers", finding.arguments);
  json.text("source", finding.source.text);
  json.openArray("remedies");
  for (const planning::Remedy& remedy : remedies) putRemedy(json, remedy, book);
  json.closeArray();
  // Only where it is so: everything listed is otherwise unaccepted.
  if (finding.accepted) json.truth("accepted", true);
  json.closeObject();
}

}  // namespace

std::string assessJson(const std::string& path, const SiteAnswer& answer, const text::Phrasebook& book) {
  JsonWriter json;
  json.openObject().text("site", path).openArray("circuits");
  for (const study::CircuitAnswer& circuit : answer.answer.circuits) putCircuit(json, circuit, answer.site);
  json.closeArray().openArray("hookups");
  for (const study::HookupAnswer& hookup : answer.answer.hookups) putHookup(json, hookup, answer);
  json.closeArray().openArray("outlets");
  for (const study::OutletAnswer& outlet : answer.answer.outlets) {
    json.openObject().text("id", outlet.id.text()).text("contact", outlet.contact);
    json.band("voltage_v", outlet.voltage ? std::optional(si(*outlet.voltage)) : std::nullopt).closeObject();
  }
  json.closeArray().openArray("findings");
  for (std::size_t i = 0; i < answer.findings.size(); ++i) {
    putFinding(json, answer.findings[i], answer.remedies[i], book);
  }
  return json.closeArray().closeObject().line();
}

std::string assessErrorJson(const std::string& path, const base::Error& error, const text::Phrasebook& book) {
  JsonWriter json;
  json.openObject().text("site", path).openObject("error").text("pointer", error.place);
  json.text("text", text::forConsole(text::errorSentence(book, error)));
  return json.closeObject().closeObject().line();
}

}  // namespace cordreach::console
