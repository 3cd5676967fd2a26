// SPDX-License-Identifier: GPL-3.0-or-later
#include "console/run_output.h"

#include <algorithm>
#include <array>
#include <set>

#include "console/json_writer.h"
#include "console/page.h"
#include "rules/case.h"
#include "rules/rule_table.h"
#include "text/quantity_text.h"

namespace cordreach::console {

namespace {

using rules::Severity;
using study::DayEvent;
using study::DayEventKind;
using study::DaySubject;
using text::Align;

constexpr std::array<std::string_view, 7> kKinds = {"on", "off", "lay", "trip", "stall", "over_rating", "beyond_model"};

std::string_view wordOf(DayEventKind kind) { return kKinds.at(static_cast<std::size_t>(kind)); }

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

void putCircuit(JsonWriter& json, const study::DayCircuit& circuit, const std::optional<double>& chance) {
  const NamedSubject named = namedOf(circuit.subject);
  json.openObject();
  if (named.kind == "circuit") {
    json.text("id", named.id);
  } else {
    json.null("id").text("outlet", named.id);
  }
  json.number("largest_a", circuit.largest.si());
  if (circuit.trip) {
    json.openObject("trip");
    json.number("earliest_s", secondsOf(circuit.trip->earliest));
    json.number("likely_s", secondsOf(circuit.trip->likely));
    json.number("latest_s", secondsOf(circuit.trip->latest));
    json.number("probability", chance);
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

class RunPage {
 public:
  RunPage(const site::Site& site, const study::DayRun& run, const text::Phrasebook& book, bool color)
      : m_site(site), m_run(run), m_book(book), m_page(book, color) {}

  std::string written() {
    head();
    events();
    cords();
    notes();
    return m_page.finished();
  }

 private:
  void head() {
    m_page.heading(
        m_book.say("run.heading", {{"building", m_site.name.empty() ? m_book.say("assess.unnamed") : m_site.name},
                                   {"run_from_s", m_run.start.si()},
                                   {"run_s", m_run.until.si()}}));
    const DayEvent* worst = nullptr;
    for (const DayEvent& event : m_run.events) {
      if (event.isFault() && (worst == nullptr || severityOf(event.kind) > severityOf(worst->kind))) worst = &event;
    }
    if (worst == nullptr) {
      m_page.verdict(Severity::Ok, m_book.say("run.sound"));
    } else {
      m_page.verdict(severityOf(worst->kind), m_book.say("run.order"));
    }
  }

  // As of the finding that it comes to.
  static Severity severityOf(DayEventKind kind) {
    switch (kind) {
      case DayEventKind::Trip:
        return rules::ruleOf("breaker.trips").severity;
      case DayEventKind::Stall:
        return rules::ruleOf("machine.stall").severity;
      case DayEventKind::OverRating:
        return rules::ruleOf("cord.conductor_over_rating").severity;
      case DayEventKind::BeyondModel:
        return rules::ruleOf("heat.beyond_model").severity;
      default:
        return Severity::Ok;
    }
  }

  // What machines do and what goes wrong; what comes and goes by itself is named where it is a cause.
  void events() {
    std::vector<std::vector<std::string>> rows;
    for (const DayEvent& event : m_run.events) {
      if (!event.isFault() && std::holds_alternative<site::FixedLoadId>(event.subject)) continue;
      rows.push_back({"  " + text::quantityText(m_book, "from_s", (m_run.start + event.at).si()), sentenceOf(event)});
    }
    if (rows.empty()) return;
    m_page.gap();
    for (const auto& row : rows) m_page.paragraph(row[1], {row[0] + "  ", "         "});
  }

  [[nodiscard]] std::string sentenceOf(const DayEvent& event) const {
    base::Arguments arguments{{"subject", nameOf(event.subject)}};
    if (event.after) {
      arguments.push_back({"cause", nameOf(*event.after)});
      arguments.push_back({"since_s", event.since.si()});
    }
    return m_book.say("run.event." + std::string(wordOf(event.kind)), arguments);
  }

  [[nodiscard]] std::string nameOf(const DaySubject& subject) const {
    if (const auto* id = std::get_if<site::HookupId>(&subject)) {
      const site::Hookup& hookup = m_site.at<site::Hookup>(*id);
      return machineName(hookup.machine, hookup.inlet);
    }
    if (const auto* id = std::get_if<site::FixedLoadId>(&subject)) return m_site.at<site::FixedLoad>(*id).name;
    if (const auto* id = std::get_if<site::CircuitId>(&subject)) {
      return rules::circuitLabel(m_site.at<site::Circuit>(*id), m_site);
    }
    if (const auto* id = std::get_if<site::OutletId>(&subject)) {
      return m_book.say("run.supposed", {{"outlet", m_site.at<site::Outlet>(*id).label}});
    }
    if (const auto* id = std::get_if<site::CordId>(&subject)) return m_site.at<site::Cord>(*id).label;
    const auto& own = std::get<study::OwnCord>(subject);
    return m_book.say("run.own_cord", {{"machine", machineName(own.machine, own.inlet)}});
  }

  [[nodiscard]] std::string machineName(const site::MachineId& id, const std::string& inlet) const {
    const site::Machine& machine = m_site.at<site::Machine>(id);
    return machine.inlets.size() > 1 ? m_book.say("run.inlet", {{"machine", machine.name}, {"inlet", inlet}})
                                     : machine.name;
  }

  // Warmest first.
  void cords() {
    std::vector<const study::DayCord*> cords;
    for (const study::DayCord& cord : m_run.cords) cords.push_back(&cord);
    std::stable_sort(cords.begin(), cords.end(),
                     [](const auto* a, const auto* b) { return a->conductor > b->conductor; });
    std::vector<std::vector<std::string>> rows;
    for (const study::DayCord* cord : cords) rows.push_back(cordRow(*cord));
    if (rows.empty()) return;
    m_page.gap();
    m_page.table({{"  " + m_book.say("run.column.cord")},
                  {m_book.say("heat.inside"), Align::Right},
                  {m_book.say("heat.outside"), Align::Right},
                  {m_book.say("run.column.limit"), Align::Right}},
                 rows);
  }

  [[nodiscard]] std::vector<std::string> cordRow(const study::DayCord& cord) const {
    const auto degrees = [&](units::Temperature temperature) {
      return cord.beyondModel ? m_book.say("heat.beyond")
                              : text::quantityText(m_book, "value_c", temperature.celsius());
    };
    return {"  " + nameOf(cord.subject), degrees(cord.conductor), degrees(cord.surface),
            text::quantityText(m_book, "limit_c", cord.limit.celsius())};
  }

  void notes() {
    m_page.gap();
    if (!m_run.guessedCycles.empty()) {
      std::set<std::string> names;
      for (const auto& id : m_run.guessedCycles) names.insert(m_site.at<site::FixedLoad>(id).name);
      std::string all;
      for (const std::string& name : names) all += (all.empty() ? "" : ", ") + name;
      m_page.paragraph(m_book.say("run.guessed", {{"loads", all}}));
    }
    m_page.paragraph(m_book.say("run.likely"));
  }

  const site::Site& m_site;
  const study::DayRun& m_run;
  const text::Phrasebook& m_book;
  Page m_page;
};

}  // namespace

std::string runJson(const study::DayRun& run, const std::vector<std::optional<double>>& chances) {
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
    const std::string inlet = named.inlet.empty() ? "" : "/" + named.inlet;
    csv += jsonNumber(sample.at.si()) + "," + std::string(named.kind) + "," + named.id + inlet + "," +
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

std::string runPage(const site::Site& site, const study::DayRun& run, const text::Phrasebook& book, bool color) {
  return RunPage(site, run, book, color).written();
}

}  // namespace cordreach::console
