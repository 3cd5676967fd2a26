// SPDX-License-Identifier: GPL-3.0-or-later
// Absent numbers choose the other words of the phrases; "never" is never good news.
#include "console/fault_output.h"

#include "console/json_writer.h"
#include "console/page.h"
#include "physics/touch_limits.h"
#include "text/quantity_text.h"
#include "text/severity_text.h"

namespace cordreach::console {

namespace {

using planning::FaultCheck;
using planning::FaultQuestion;
using study::Band;
using Seconds = std::optional<units::Duration>;

std::optional<double> secondsOf(const Seconds& time) { return time ? std::optional(time->si()) : std::nullopt; }

void putTimes(JsonWriter& json, const char* key, bool claimed, const physics::TripTimes& times) {
  if (!claimed) {
    json.null(key);
    return;
  }
  json.openObject(key).number("earliest_s", secondsOf(times.earliest));
  json.number("likely_s", secondsOf(times.likely)).number("latest_s", secondsOf(times.latest)).closeObject();
}

template <class Quantity>
Band<double> si(const Band<Quantity>& band) {
  return {band.likely.si(), band.low.si(), band.high.si()};
}

base::Arguments argumentsOf(const FaultQuestion& question, const FaultCheck& check) {
  const study::FaultAnswer& fault = check.fault;
  base::Arguments all{{"cord", question.cord.legend},
                      {"length_m", question.cord.length->value.si()},
                      {"rating_a", question.breaker.rating.si()},
                      {"limit_c", physics::conductorShortCircuit().value.celsius()},
                      {"touch_v", check.frame.likely.si()}};
  const auto add = [&](const char* name, const std::optional<double>& value) {
    if (value) all.push_back({name, *value});
  };
  if (question.carrying > units::Current{}) add("carrying_a", question.carrying.si());
  if (fault.current) {
    add("fault_a", fault.current->likely.si());
    add("fault_low_a", fault.current->low.si());
    add("fault_high_a", fault.current->high.si());
  }
  if (fault.conductor) add("conductor_c", fault.conductor->likely.celsius());
  add("likely_s", secondsOf(fault.cleared.likely));
  add("latest_s", secondsOf(fault.cleared.latest));
  add("damage_s", secondsOf(fault.damage));
  add("live_s", secondsOf(check.frameLive));
  all.push_back({"earth", question.earthBroken ? "broken" : "whole"});
  all.push_back({"device", question.groundFaultDevice ? "yes" : "no"});
  if (check.arc) {
    add("arc_low_a", check.arc->low.si());
    add("arc_high_a", check.arc->high.si());
    add("arc_s", secondsOf(check.arcCleared.likely));
  }
  return all;
}

std::vector<std::string> row(const text::Phrasebook& book, const char* name, const Seconds& fault, const Seconds& arc) {
  const auto words = [&](const Seconds& time) {
    return time ? text::quantityText(book, "time_s", time->si()) : book.say("trip.never");
  };
  return {"  " + book.say(name), words(fault), words(arc)};
}

}  // namespace

std::string faultJson(const FaultQuestion& question, const FaultCheck& check) {
  const study::FaultAnswer& fault = check.fault;
  JsonWriter json;
  json.openObject();
  std::optional<Band<double>> current;
  if (fault.current) current = si(*fault.current);
  json.band("current_a", current).truth("clearing_claimed", fault.claimed);
  putTimes(json, "cleared", fault.claimed, fault.cleared);
  json.number("damage_s", secondsOf(fault.damage));
  std::optional<Band<double>> conductor;
  if (fault.conductor) {
    conductor = {fault.conductor->likely.celsius(), fault.conductor->low.celsius(), fault.conductor->high.celsius()};
  }
  json.band("conductor_c", conductor).number("limit_c", physics::conductorShortCircuit().value.celsius());
  json.number("arc_low_a", check.arc ? std::optional(check.arc->low.si()) : std::nullopt);
  json.number("arc_high_a", check.arc ? std::optional(check.arc->high.si()) : std::nullopt);
  putTimes(json, "arc_cleared", check.arc.has_value(), check.arcCleared);
  json.truth("earth", !question.earthBroken).band("touch_v", si(check.frame));
  json.number("touch_s", secondsOf(check.frameLive)).text("verdict", text::severityCode(check.verdict));
  return json.closeObject().line();
}

std::string faultPage(const FaultQuestion& question, const FaultCheck& check, const text::Phrasebook& book,
                      bool color) {
  const base::Arguments arguments = argumentsOf(question, check);
  Page page(book, color);
  page.heading(book.say("fault.heading", arguments));
  page.verdict(check.verdict, book.say(check.reason, arguments));
  page.gap();
  if (check.fault.claimed) {
    const physics::TripTimes& cleared = check.fault.cleared;
    const physics::TripTimes& arc = check.arcCleared;
    page.table(
        {{"  " + book.say("trip.curve")}, {book.say("fault.when")}, {book.say("fault.when_arcing")}},
        {row(book, "trip.earliest", cleared.earliest, arc.earliest),
         row(book, "trip.middle", cleared.likely, arc.likely), row(book, "trip.latest", cleared.latest, arc.latest)});
    page.gap();
    page.paragraph(book.say("fault.current", arguments));
  }
  page.paragraph(book.say(question.earthBroken ? "fault.frame_without_earth" : "fault.frame_with_earth", arguments));
  return page.finished();
}

}  // namespace cordreach::console
