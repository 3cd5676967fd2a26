// SPDX-License-Identifier: GPL-3.0-or-later
#include "console/run_output.h"

#include <array>

#include "console/json_writer.h"
#include "io/table_csv.h"

namespace cordreach::console {

namespace {

using study::DayEvent;
using study::DayEventKind;
using study::DaySubject;

std::optional<double> secondsOf(const std::optional<units::Duration>& time) {
  return time ? std::optional(time->si()) : std::nullopt;
}

struct NamedSubject {
  std::string_view kind;
  std::string id;
  std::string inlet{};  // of a machine's own cord
};

NamedSubject namedOf(const DaySubject& subject) {
  struct Namer {
    NamedSubject operator()(const site::HookupId& id) const { return {"hookup", id.text()}; }
    NamedSubject operator()(const site::FixedLoadId& id) const { return {"fixed_load", id.text()}; }
    NamedSubject operator()(const site::CircuitId& id) const { return {"circuit", id.text()}; }
    NamedSubject operator()(const site::OutletId& id) const { return {"outlet", id.text()}; }
    NamedSubject operator()(const site::CordId& id) const { return {"cord", id.text()}; }
    NamedSubject operator()(const site::PanelId& id) const { return {"panel", id.text()}; }
    NamedSubject operator()(const study::OwnCord& own) const { return {"machine", own.machine.text(), own.inlet}; }
  };
  return std::visit(Namer{}, subject);
}

void putSubject(JsonWriter& json, const char* key, const std::optional<DaySubject>& subject) {
  if (!subject) {
    json.null(key);
    return;
  }
  const NamedSubject named = namedOf(*subject);
  json.openObject(key).text("kind", named.kind).text("id", named.id);
  if (!named.inlet.empty()) json.text("inlet", named.inlet);
  json.closeObject();
}

void putEvent(JsonWriter& json, const DayEvent& event) {
  json.openObject().number("time_s", event.at.si()).text("kind", wordOf(event.kind));
  putSubject(json, "subject", event.subject);
  if (event.isFault()) {
    putSubject(json, "after", event.after);
    json.number("after_s", event.after ? std::optional(event.since.si()) : std::nullopt);
  }
  json.closeObject();
}

void putFindOut(JsonWriter& json, const std::optional<study::Chance>& chance) {
  const study::Influence* worth = chance ? chance->worthMeasuring() : nullptr;
  if (worth == nullptr) {
    json.null("find_out");
    return;
  }
  json.openObject("find_out").text("kind", study::nameOf(worth->kind));
  if (worth->id.empty()) {
    json.null("id");
  } else {
    json.text("id", worth->id);
  }
  json.number("share", worth->share).closeObject();
}

void putCircuit(JsonWriter& json, const study::DayCircuit& circuit, const std::optional<study::Chance>& chance) {
  const NamedSubject named = namedOf(circuit.subject);
  json.openObject();
  if (named.kind == "circuit") {
    json.text("id", named.id);
  } else {
    json.null("id").text(named.kind, named.id);
  }
  json.number("largest_a", circuit.largest.si());
  if (circuit.trip) {
    json.openObject("trip");
    json.number("earliest_s", secondsOf(circuit.trip->earliest));
    json.number("likely_s", secondsOf(circuit.trip->likely));
    json.number("latest_s", secondsOf(circuit.trip->latest));
    json.number("probability", chance ? std::optional(chance->trips) : std::nullopt);
    putFindOut(json, chance);
    json.closeObject();
  } else {
    json.null("trip");
  }
  json.closeObject();
}

void putCord(JsonWriter& json, const study::DayCord& cord) {
  const NamedSubject named = namedOf(cord.subject);
  const bool own = named.kind == "machine";
  json.openObject();
  if (own) {
    json.null("id").truth("own", true).text("machine", named.id).text("inlet", named.inlet);
  } else {
    json.text("id", named.id).truth("own", false);
  }
  const auto unlessBeyond = [&](units::Temperature temperature) {
    return cord.beyondModel ? std::nullopt : std::optional(temperature.celsius());
  };
  json.number("conductor_c", unlessBeyond(cord.conductor));
  json.number("surface_c", unlessBeyond(cord.surface));
  json.number("limit_c", cord.limit.celsius());
  json.number("limit_at_s", secondsOf(cord.limitAt));
  json.closeObject();
}

}  // namespace

std::string_view wordOf(DayEventKind kind) {
  constexpr std::array<std::string_view, 7> kKinds = {"on",    "off",         "lay",         "trip",
                                                      "stall", "over_rating", "beyond_model"};
  return kKinds.at(static_cast<std::size_t>(kind));
}

std::string runJson(const study::DayRun& run, const Chances& chances) {
  JsonWriter json;
  json.openObject().number("start_s", run.start.si()).number("until_s", run.until.si()).openArray("events");
  for (const DayEvent& event : run.events) putEvent(json, event);
  json.closeArray().openArray("circuits");
  for (std::size_t i = 0; i < run.circuits.size(); ++i) putCircuit(json, run.circuits[i], chances[i]);
  json.closeArray().openArray("cords");
  for (const study::DayCord& cord : run.cords) putCord(json, cord);
  json.closeArray().openArray("guessed_cycles");
  for (const auto& id : run.guessedCycles) json.text({}, id.text());
  return json.closeArray().closeObject().line();
}

std::string runCsv(const study::DayRun& run) {
  std::string csv = "time_s,kind,id,current_a,conductor_c,surface_c\n";
  const auto begin = [&](const study::DaySample& sample, const DaySubject& subject, units::Current current) {
    const NamedSubject named = namedOf(subject);
    const std::string id = named.inlet.empty() ? named.id : named.id + "/" + named.inlet;
    csv += jsonNumber(sample.at.si()) + "," + std::string(named.kind) + "," + io::csvText(id) + "," +
           jsonNumber(current.si());
  };
  for (const study::DaySample& sample : run.samples) {
    for (std::size_t i = 0; i < run.circuits.size(); ++i) {
      begin(sample, run.circuits[i].subject, sample.circuits[i]);
      csv += ",,\n";
    }
    for (std::size_t i = 0; i < run.cords.size(); ++i) {
      begin(sample, run.cords[i].subject, sample.cords[i]);
      csv += "," + jsonNumber(sample.conductors[i].celsius()) + "," + jsonNumber(sample.surfaces[i].celsius()) + "\n";
    }
  }
  return csv;
}

}  // namespace cordreach::console
