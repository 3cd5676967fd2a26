// SPDX-License-Identifier: GPL-3.0-or-later
// The building as it stands between two cuts is put into a scene by the same hands as for `assess`; what differs from
// the scene before is switching. Nodes of cords are added as they come, so a cord that is moved is in both places, and
// the same piece of copper: it is as warm as the last work has left it.
#include "study/day_plan.h"

#include <algorithm>
#include <set>
#include <tuple>

#include "base/contract.h"
#include "physics/load_model.h"
#include "study/assumptions.h"
#include "study/breaker_answer.h"
#include "study/day_events.h"
#include "study/day_loads.h"
#include "study/day_span.h"
#include "study/load_book.h"
#include "study/machine_plate.h"
#include "study/moments.h"
#include "study/scene.h"
#include "study/start_study.h"
#include "study/wiring.h"
#include "timeline/cord_warmth.h"
#include "timeline/wire_warmth.h"

namespace cordreach::study {

namespace {

using timeline::LoadPlace;
using units::Duration;

std::set<site::PanelId> panelsOf(const site::Site& site) {
  std::set<site::PanelId> panels;
  for (const auto& panel : site.all<site::Panel>()) panels.insert(panel.id);
  return panels;
}

const site::CordMake& makeOf(const site::Site& site, const DaySubject& cord) {
  if (const auto* id = std::get_if<site::CordId>(&cord)) return site.at<site::Cord>(*id).make;
  const auto& own = std::get<OwnCord>(cord);
  return inletOf(site.at<site::Machine>(own.machine), own.inlet).cord;
}

class DayPlanner {
 public:
  DayPlanner(const site::Site& site, Duration until, const std::set<site::PanelId>& panels)
      : m_site(site), m_wiring(wire(site, {Corner::Likely, panels, {}})), m_book(site), m_events(site) {
    m_plan.start = dayStartOf(site);
    m_plan.day.until = until;
    m_plan.day.network = m_wiring.network;
  }

  DayPlan run() {
    addWalls();
    addBreakers();
    for (const Duration cut : cuts()) take(cut);
    for (const auto& [place, span] : m_open) close(span, m_plan.day.until, true);
    auto& changes = m_plan.day.changes;
    std::stable_sort(changes.begin(), changes.end(), [](const auto& a, const auto& b) { return a.at < b.at; });
    return std::move(m_plan);
  }

 private:
  void addWalls() {
    const auto neverTold = units::Temperature::fromCelsius(1e6);
    for (const timeline::HeatedBranch& branch : m_wiring.heated) {
      const auto run = std::dynamic_pointer_cast<const RunHeat>(branch.heat);
      CORDREACH_EXPECTS(run != nullptr);
      m_plan.day.conductors.push_back(
          {{{branch.circuit, branch.node}},
           std::make_shared<timeline::WireWarmth>(run, [run](double rmsA) { return run->temperatureAt(rmsA); }),
           neverTold});
      m_plan.conductors.emplace_back();
    }
  }

  void addBreakers() {
    const Groups& groups = m_wiring.groups;
    for (const auto& [id, place] : groups.places) {
      const auto& circuit = m_site.at<site::Circuit>(id);
      const std::size_t first = groups.groups[place.group].firstPoles[place.member];
      const std::size_t poles = std::max<std::size_t>(1, circuit.phases.size());
      m_plan.day.protectedPoles.push_back(
          {place.group, first, poles, breakerOf(circuit), breakerAirOf(m_site), !circuit.mayNotTrip});
      m_plan.protectedPoles.emplace_back(id);
    }
    for (const auto& [outlet, circuit] : m_wiring.supposed) {
      const physics::Breaker strictest{15.0 * units::ampere};
      m_plan.day.protectedPoles.push_back({circuit, 0, 1, strictest, breakerAirOf(m_site)});
      m_plan.protectedPoles.emplace_back(outlet);
    }
    for (const auto& [id, index] : m_wiring.panels) {
      const auto& rating = m_site.at<site::Panel>(id).mainRating;
      if (!rating) continue;
      timeline::ProtectedPoles main{0, 0, 0, physics::Breaker{rating->value}, breakerAirOf(m_site)};
      main.panel = index;
      m_plan.day.protectedPoles.push_back(std::move(main));
      m_plan.protectedPoles.emplace_back(id);
    }
  }

  // Times of the planned day at which anything changes, the run's start first.
  [[nodiscard]] std::set<Duration> cuts() const {
    std::set<Duration> cuts = cutsOf(m_site);
    for (const auto& event : m_site.all<site::Event>()) cuts.insert(event.at);
    std::erase_if(cuts, [&](Duration cut) { return cut < m_plan.start || cut >= m_plan.start + m_plan.day.until; });
    cuts.insert(m_plan.start);
    return cuts;
  }

  void take(Duration cut) {
    m_events.applyUntil(cut);
    const Scene scene = sceneOf(m_events.site(), m_wiring, m_events.momentAt(cut), Corner::Likely, m_book);
    const Duration since = cut - m_plan.start;
    std::map<LoadPlace, LoadSpan> present;
    for (const auto& [id, plugged] : scene.hookups) takeHookup(id, plugged, scene, since, present);
    for (const auto& [id, place] : scene.loads) takeLoad(id, place, scene, since, present);
    std::erase_if(m_open, [&](const auto& open) {
      const auto still = present.find(open.first);
      const auto same = [&](const LoadSpan& now) {
        return now.law == open.second.law && now.cycle == open.second.cycle;
      };
      if (still != present.end() && same(still->second)) return false;
      close(open.second, since, false);
      return true;
    });
    for (const auto& [place, span] : present) m_open.insert({place, span});
  }

  void takeHookup(const site::HookupId& id, const Plugged& plugged, const Scene& scene, Duration since,
                  std::map<LoadPlace, LoadSpan>& present) {
    Tap tap = plugged.tap;
    tap.node = plugged.outletTap.node;
    for (std::size_t i = 0; i < plugged.chain.size(); ++i) {
      const network::Node& node = scene.network.circuits[tap.circuit].nodes[plugged.chain[i].node];
      tap.node = takeCord(plugged.chain[i], tap, node.label, i == 0 && isLoose(plugged), since);
    }
    if (!plugged.load) return;
    const auto& load = scene.network.circuits[tap.circuit].loads[*plugged.load];
    const LoadPlace place = placeOf(id, tap, load.label);
    const site::Hookup& hookup = m_events.site().at<site::Hookup>(id);
    const auto peak = startPeakOf(startMachineOf(m_site, hookup, nominalOf(m_wiring, plugged.tap)));
    present.insert({place, {place, load.law, since, {}, false, peak, {}, {}}});
  }

  [[nodiscard]] bool isLoose(const Plugged& plugged) const {
    const auto& contacts = m_site.at<site::Outlet>(plugged.outlet).contacts;
    return std::any_of(contacts.begin(), contacts.end(),
                       [&](const site::Contact& contact) { return contact.name == plugged.contact && contact.loose; });
  }

  void takeLoad(const site::FixedLoadId& id, const std::pair<Tap, std::size_t>& where, const Scene& scene,
                Duration since, std::map<LoadPlace, LoadSpan>& present) {
    const auto& [tap, index] = where;
    const auto& load = scene.network.circuits[tap.circuit].loads[index];
    const LoadPlace place = placeOf(id, tap, load.label);
    const site::FixedLoad& fixed = m_events.site().at<site::FixedLoad>(id);
    if (since == Duration{} && !fixed.hours && !fixed.cycle && !fixed.charge && !m_events.isByHand(id)) {
      m_plan.day.network.circuits[place.circuit].loads[place.load].law = load.law;
      m_standing.insert(place);
    }
    const auto peak = startPeakOf(startMachineOf(fixed, nominalOf(m_wiring, tap)));
    present.insert({place, {place, load.law, since, {}, false, peak, cycleOf(fixed), fixed.charge}});
  }

  // With its first time since the run's start.
  std::optional<site::Cycle> cycleOf(const site::FixedLoad& load) {
    if (!load.cycle || !(load.cycle->on + load.cycle->off > Duration{})) return std::nullopt;
    site::Cycle cycle = *load.cycle;
    if (cycle.firstOn) {
      cycle.firstOn = *cycle.firstOn - m_plan.start;
    } else {
      cycle.firstOn = cycle.off / 2.0;
      auto& guessed = m_plan.guessedCycles;
      if (std::find(guessed.begin(), guessed.end(), load.id) == guessed.end()) guessed.push_back(load.id);
    }
    return cycle;
  }

  LoadPlace placeOf(const DaySubject& subject, const Tap& tap, const std::string& label) {
    const auto known = m_places.find({subject, tap.circuit, tap.node, tap.pole});
    if (known != m_places.end()) return known->second;
    auto& loads = m_plan.day.network.circuits[tap.circuit].loads;
    loads.push_back({label, tap.node, tap.pole, tap.toPole, nullptr});
    const LoadPlace place{tap.circuit, loads.size() - 1};
    m_places.insert({{subject, tap.circuit, tap.node, tap.pole}, place});
    m_plan.loads.insert({place, subject});
    return place;
  }

  void close(LoadSpan span, Duration until, bool atTheEnd) {
    span.until = until;
    span.untilTheEnd = atTheEnd;
    if (!m_standing.contains(span.place)) return addChanges(span, m_plan.day.changes);
    // It has been on all the time: all that happens is that it goes off, and from then on it is as any other.
    m_standing.erase(span.place);
    if (atTheEnd) return;
    timeline::Change off;
    off.at = until;
    off.kind = timeline::ChangeKind::Off;
    off.load = span.place;
    m_plan.day.changes.push_back(off);
  }

  // Its node at the far end, as it lies now.
  std::size_t takeCord(const CordLink& link, const Tap& tap, const std::string& label, bool loose, Duration since) {
    const site::Site& now = m_events.site();
    const DaySubject cord = cordOf(link);
    const std::string via = link.extension ? "x" + link.extension->text() : "h" + link.hookup->text();
    const site::LayingOfCord& laying = link.extension ? now.at<site::ExtensionUse>(*link.extension).laying
                                                      : now.at<site::Hookup>(*link.hookup).ownCord;
    const auto [node, isNew] = m_nodes.insert({{tap.circuit, tap.node, via}, 0});
    auto& nodes = m_plan.day.network.circuits[tap.circuit].nodes;
    if (isNew) {
      node->second = nodes.size();
      nodes.push_back({label, tap.node, {}});
    }
    const std::size_t conductor = layCord(cord, {via, laying, loose}, since);
    auto& places = m_plan.day.conductors[conductor].places;
    if (isNew) {
      places.push_back({tap.circuit, node->second});
      nodes[node->second].branch = m_plan.day.conductors[conductor].warmth->branch();
    }
    return node->second;
  }

  DaySubject cordOf(const CordLink& link) const {
    if (link.extension) return m_site.at<site::ExtensionUse>(*link.extension).cord;
    const auto& hookup = m_site.at<site::Hookup>(*link.hookup);
    return OwnCord{hookup.machine, hookup.inlet};
  }

  struct Lain {
    std::string via;  // the plugging in which it lies so
    site::LayingOfCord laying;
    bool loose = false;
  };

  std::size_t layCord(const DaySubject& cord, const Lain& lain, Duration since) {
    const auto known = m_cords.find(cord);
    if (known == m_cords.end()) {
      const std::size_t index = m_plan.day.conductors.size();
      const site::CordMake& make = makeOf(m_site, cord);
      m_plan.day.conductors.push_back({{}, warmthOf(make, lain), ratingOf(make)});
      m_plan.conductors.emplace_back(cord);
      m_cords.insert({cord, {index, lain}});
      return index;
    }
    auto& [index, before] = known->second;
    if (before.laying != lain.laying || before.loose != lain.loose) {
      timeline::Change change;
      change.at = since;
      change.kind = timeline::ChangeKind::Lay;
      change.conductor = index;
      change.laying = warmthOf(makeOf(m_site, cord), lain);
      change.silent = before.via != lain.via;  // carried elsewhere, and laid out anew there
      m_plan.day.changes.push_back(std::move(change));
    }
    before = lain;
    return index;
  }

  [[nodiscard]] std::shared_ptr<const timeline::Warmth> warmthOf(const site::CordMake& make, const Lain& lain) const {
    const auto heat =
        std::make_shared<CordHeat>(CordHeat::Inputs{make, lain.laying, roomOf(m_site), Corner::Likely, lain.loose});
    timeline::CordWarmth::Inputs inputs{
        physics::ladderOf(heat->section(), physics::Corner::Likely),
        {},
        roomOf(m_site),
        [heat](units::Temperature worst, units::Temperature elsewhere) { return heat->at(worst, elsewhere); }};
    if (heat->isPartly()) {
      physics::CordSection onFloor = heat->section();
      onFloor.laying = tables::Laying::Floor;
      inputs.elsewhere = physics::ladderOf(onFloor, physics::Corner::Likely);
    }
    return std::make_shared<timeline::CordWarmth>(inputs);
  }

  const site::Site& m_site;
  Wiring m_wiring;
  LoadBook m_book;
  DayEvents m_events;
  DayPlan m_plan;
  std::map<std::tuple<std::size_t, std::size_t, std::string>, std::size_t> m_nodes;
  std::map<std::tuple<DaySubject, std::size_t, std::size_t, std::size_t>, LoadPlace> m_places;
  std::map<DaySubject, std::pair<std::size_t, Lain>> m_cords;
  std::map<LoadPlace, LoadSpan> m_open;
  std::set<LoadPlace> m_standing;
};

}  // namespace

DayPlan dayPlanOf(const site::Site& site, Duration until, const std::optional<std::set<site::PanelId>>& panels) {
  return DayPlanner(site, until, panels.value_or(panelsOf(site))).run();
}

}  // namespace cordreach::study
