// SPDX-License-Identifier: GPL-3.0-or-later
// What `run` tells a person: what happens in its order, how warm every cord gets, how sure that is.
#include <algorithm>
#include <set>
#include <utility>

#include "console/page.h"
#include "console/run_output.h"
#include "rules/rule_table.h"
#include "site/assigning.h"
#include "text/quantity_text.h"

namespace cordreach::console {

namespace {

using rules::Severity;
using study::DayEvent;
using study::DayEventKind;
using study::DaySubject;
using text::Align;

class RunPage {
 public:
  RunPage(const site::Site& site, const study::DayRun& run, const Chances& chances, const text::Phrasebook& book,
          bool color)
      : m_site(site), m_run(run), m_chances(chances), m_book(book), m_page(book, color) {}

  std::string written() {
    head();
    events();
    cords();
    chances();
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
      return site::circuitNumberOf(m_site, m_site.at<site::Circuit>(*id));
    }
    if (const auto* id = std::get_if<site::OutletId>(&subject)) {
      return m_book.say("run.supposed", {{"outlet", m_site.at<site::Outlet>(*id).label}});
    }
    if (const auto* id = std::get_if<site::CordId>(&subject)) return m_site.at<site::Cord>(*id).label;
    if (const auto* id = std::get_if<site::PanelId>(&subject)) {
      return m_book.say("run.main", {{"panel", m_site.at<site::Panel>(*id).name}});
    }
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

  // Of every breaker that one of its curves trips.
  void chances() {
    bool first = true;
    for (std::size_t i = 0; i < m_run.circuits.size(); ++i) {
      if (!m_chances[i]) continue;
      if (std::exchange(first, false)) m_page.gap();
      const study::Influence* worth = m_chances[i]->worthMeasuring();
      base::Arguments arguments{{"subject", nameOf(m_run.circuits[i].subject)},
                                {"trips_percent", 100.0 * m_chances[i]->trips}};
      if (worth != nullptr) {
        arguments.push_back({"find_out", m_book.say("run.find." + std::string(study::nameOf(worth->kind)),
                                                    {{"of", unknownName(*worth)}})});
      }
      m_page.paragraph(m_book.say("run.chance", arguments));
    }
  }

  // What an unknown is of, by the name that people know it by.
  [[nodiscard]] std::string unknownName(const study::Influence& unknown) const {
    if (const auto* load = m_site.find<site::FixedLoad>(site::FixedLoadId(unknown.id))) return load->name;
    if (const auto* use = m_site.find<site::ExtensionUse>(site::ExtensionUseId(unknown.id))) return nameOf(use->cord);
    if (const auto* hookup = m_site.find<site::Hookup>(site::HookupId(unknown.id))) return nameOf(hookup->id);
    const auto* circuit = m_site.find<site::Circuit>(site::CircuitId(unknown.id));
    return circuit != nullptr ? nameOf(circuit->id) : std::string();
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
  const Chances& m_chances;
  const text::Phrasebook& m_book;
  Page m_page;
};

}  // namespace

std::string runPage(const site::Site& site, const study::DayRun& run, const Chances& chances,
                    const text::Phrasebook& book, bool color) {
  return RunPage(site, run, chances, book, color).written();
}

}  // namespace cordreach::console
