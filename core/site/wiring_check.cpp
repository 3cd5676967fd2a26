// SPDX-License-Identifier: GPL-3.0-or-later
// Panels hang on supplies as trees, circuits on panels, and the outlets of a circuit on its breaker as a tree.
#include <algorithm>
#include <map>
#include <set>
#include <unordered_map>
#include <unordered_set>

#include "site/checks.h"
#include "site/phases.h"

namespace cordreach::site {
namespace {

using base::Error;

Fault panelFault(const Site& site) {
  for (const Panel& panel : site.all<Panel>()) {
    if (panel.supply && panel.fedFrom) {
      return Error{"site.two_feeds", pointerTo(site, panel) + "/fed_from", {{"id", panel.id.text()}}};
    }
    if (!panel.supply && !panel.fedFrom) {
      return Error{"site.no_supply", pointerTo(site, panel), {{"id", panel.id.text()}}};
    }
  }
  std::unordered_set<PanelId> reached;
  for (const Panel& panel : site.all<Panel>()) {
    std::unordered_set<PanelId> way;
    const Panel* at = &panel;
    while (at->fedFrom && reached.count(at->id) == 0) {
      if (!way.insert(at->id).second) {
        return Error{"site.wiring_loop", pointerTo(site, *at) + "/fed_from", {{"id", at->id.text()}}};
      }
      at = &site.at<Panel>(*at->fedFrom);
    }
    reached.merge(way);
  }
  return std::nullopt;
}

Fault phaseFault(const Site& site, const Circuit& circuit) {
  const std::size_t phases = phaseCount(supplyOf(site, site.at<Panel>(circuit.panel)).system);
  const std::string pointer = pointerTo(site, circuit) + "/phases";
  if (circuit.phases.empty()) return Error{"site.no_phase", pointer, {{"id", circuit.id.text()}}};
  for (std::size_t i = 0; i < circuit.phases.size(); ++i) {
    if (circuit.phases[i] < phases) continue;
    return Error{"site.bad_phase", pointer + "/" + std::to_string(i), {{"id", circuit.id.text()}}};
  }
  return std::nullopt;
}

Fault circuitFault(const Site& site) {
  for (const Circuit& circuit : site.all<Circuit>()) {
    if (auto fault = phaseFault(site, circuit)) return fault;
    const std::string pointer = pointerTo(site, circuit);
    if (circuit.rating && !(circuit.rating->value.si() > 0.0)) {
      return Error{"site.out_of_range", pointer + "/rating_a", {{"value_a", circuit.rating->value.si()}}};
    }
    for (std::size_t i = 0; i < circuit.sharesNeutralWith.size(); ++i) {
      const CircuitId& other = circuit.sharesNeutralWith[i];
      if (other != circuit.id && site.at<Circuit>(other).panel == circuit.panel) continue;
      return Error{"site.bad_shared_neutral",
                   pointer + "/shares_neutral_with/" + std::to_string(i),
                   {{"id", circuit.id.text()}, {"other", other.text()}}};
    }
  }
  return std::nullopt;
}

// Of one circuit: the run that feeds each outlet.
using Feeds = std::map<std::pair<CircuitId, OutletId>, const Run*>;

Fault loopFault(const Site& site, const Feeds& feeds) {
  std::set<std::pair<CircuitId, OutletId>> reached;
  for (const auto& [start, first] : feeds) {
    std::set<std::pair<CircuitId, OutletId>> way;
    auto at = feeds.find(start);
    while (at != feeds.end() && reached.count(at->first) == 0) {
      const Run& run = *at->second;
      if (!way.insert(at->first).second) {
        return Error{"site.wiring_loop",
                     pointerTo(site, run) + "/from",
                     {{"id", run.id.text()}, {"outlet", run.to.text()}, {"circuit", run.circuit.text()}}};
      }
      if (!run.from) break;
      at = feeds.find({run.circuit, *run.from});
    }
    reached.merge(way);
  }
  return std::nullopt;
}

Fault runFault(const Site& site) {
  Feeds feeds;
  for (const Run& run : site.all<Run>()) {
    if (feeds.try_emplace({run.circuit, run.to}, &run).second) continue;
    return Error{"site.two_feeds",
                 pointerTo(site, run) + "/to",
                 {{"id", run.id.text()}, {"outlet", run.to.text()}, {"circuit", run.circuit.text()}}};
  }
  return loopFault(site, feeds);
}

}  // namespace

Fault wiringFault(const Site& site) {
  Fault fault = panelFault(site);
  if (!fault) fault = circuitFault(site);
  if (!fault) fault = runFault(site);
  return fault;
}

}  // namespace cordreach::site
