// SPDX-License-Identifier: GPL-3.0-or-later
// Runs, panels and fixed loads of a floor.
#include <algorithm>
#include <map>

#include "map/content_parts.h"
#include "map/map_figures.h"

namespace cordreach::app {
namespace {

void addRuns(MapContent& content, const ContentWish& wish) {
  for (const site::Run& run : wish.site.all<site::Run>()) {
    MapRun item{run.circuit};
    item.to = indexOfOutlet(content, run.to);
    if (run.from) item.from = indexOfOutlet(content, *run.from);
    if (item.to < 0 || (run.from && item.from < 0)) continue;
    item.guessed = !run.length || run.length->isGuess();
    for (const geometry::Point& point : run.path) item.path << toPoint(point);
    if (wish.figures != nullptr) {
      const auto heat = wish.figures->wires.find(run.circuit);
      if (heat != wish.figures->wires.end()) item.heat = heat->second;
    }
    if (!run.from) {
      item.name = circuitName(wish.site, run.circuit);
      if (item.heat) item.name += QStringLiteral(", ") + degreesText(wish.book, *item.heat);
      const site::Panel* panel = wish.site.find<site::Panel>(wish.site.at<site::Circuit>(run.circuit).panel);
      if (panel != nullptr && panel->place && panel->place->floor == *wish.floor) {
        item.panel = toPoint(panel->place->at);
      }
    }
    content.runs.push_back(std::move(item));
  }
}

// Of a panel the circuit that is worst off; a chosen one goes before.
const study::CircuitAnswer* shownCircuit(const ContentWish& wish, const site::PanelId& panel) {
  if (wish.verdict == nullptr) return nullptr;
  const auto chosen = chosenCircuits(wish.site, wish.chosen);
  const study::CircuitAnswer* worst = nullptr;
  int worstRank = 0;
  for (const study::CircuitAnswer& answer : wish.verdict->answer.circuits) {
    const site::Circuit* circuit = wish.site.find<site::Circuit>(answer.id);
    if (circuit == nullptr || circuit->panel != panel) continue;
    const bool isChosen = std::find(chosen.begin(), chosen.end(), answer.id) != chosen.end();
    const auto severity = severityOf(wish.verdict, {rules::SubjectKind::Circuit, answer.id.text()});
    const int rank = (isChosen ? 100 : 0) + static_cast<int>(severity);
    if (rank > worstRank) {
      worst = &answer;
      worstRank = rank;
    }
  }
  return worst;
}

std::string_view systemWord(site::WiringSystem system) {
  switch (system) {
    case site::WiringSystem::SplitPhase120:
      return "map.system.split_phase_120";
    case site::WiringSystem::Wye208:
      return "map.system.wye_208";
    case site::WiringSystem::Single120:
      return "map.system.single_120";
    case site::WiringSystem::Single230:
      return "map.system.single_230";
    case site::WiringSystem::Wye400:
      return "map.system.wye_400";
  }
  return "map.system.single_120";
}

const site::Supply* supplyOf(const site::Site& site, const site::Panel& panel) {
  const site::Panel* head = &panel;
  for (int step = 0; step < 16 && head != nullptr && head->fedFrom; ++step) {
    head = site.find<site::Panel>(*head->fedFrom);
  }
  return head != nullptr && head->supply ? site.find<site::Supply>(*head->supply) : nullptr;
}

void addPanels(MapContent& content, const ContentWish& wish) {
  for (const site::Panel& panel : wish.site.all<site::Panel>()) {
    if (!panel.place || panel.place->floor != *wish.floor) continue;
    MapPanel item{panel.id, say(wish.book, "map.panel", {{"panel", panel.name}}), toPoint(panel.place->at)};
    if (const site::Supply* supply = supplyOf(wish.site, panel)) {
      item.system = say(wish.book, systemWord(supply->system));
    }
    item.severity = severityOf(wish.verdict, {rules::SubjectKind::Panel, panel.id.text()});
    if (const study::CircuitAnswer* answer = shownCircuit(wish, panel.id)) {
      item.circuitFigure = ampsText(wish.book, answer->current.likely);
      item.circuitName = circuitName(wish.site, answer->id);
      if (answer->breaker.rating) {
        item.circuitName +=
            QStringLiteral(", ") + QString::fromStdString(wish.book.say(
                                       "map.rating", {{"rating_a", answer->breaker.rating->in(units::ampere)}}));
      }
    }
    for (const site::Circuit& circuit : wish.site.all<site::Circuit>()) {
      if (circuit.panel != panel.id) continue;
      item.severity =
          std::max(item.severity, severityOf(wish.verdict, {rules::SubjectKind::Circuit, circuit.id.text()}));
    }
    content.panels.push_back(std::move(item));
  }
}

QString loadFigure(const ContentWish& wish, const site::FixedLoad& load) {
  if (load.off) return say(wish.book, "map.off");
  const auto& stated = load.running ? load.running : load.plate;
  if (!stated) return {};
  const QString amps = ampsText(wish.book, stated->value);
  return load.cycle ? amps + say(wish.book, "map.comes_and_goes") : amps;
}

void addLoads(MapContent& content, const ContentWish& wish) {
  for (const site::FixedLoad& load : wish.site.all<site::FixedLoad>()) {
    if (!load.place || load.place->floor != *wish.floor) continue;
    MapLoad item{load.id, QString::fromStdString(load.name), toPoint(load.place->at), -1, load.circuit};
    if (load.outlet) item.outlet = indexOfOutlet(content, *load.outlet);
    item.off = load.off;
    item.figure = loadFigure(wish, load);
    content.loads.push_back(std::move(item));
  }
}

}  // namespace

void addWiring(MapContent& content, const ContentWish& wish) {
  addRuns(content, wish);
  addPanels(content, wish);
  addLoads(content, wish);
}

}  // namespace cordreach::app
