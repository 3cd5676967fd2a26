// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/chance_model.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "base/contract.h"
#include "study/assumptions.h"
#include "study/branch_heat.h"
#include "study/breaker_answer.h"
#include "study/circuit_load.h"
#include "study/panel_family.h"
#include "study/panel_states.h"

namespace cordreach::study {

namespace {

using units::ampere;
using units::Current;
using units::Duration;

constexpr Duration kUnplannedRun = 2.0 * units::hour;  // as for a hookup without hours
constexpr Duration kStanding = 3.0 * units::hour;      // of fixed loads alone: what the code calls continuous
constexpr double kReadAmps = 0.05;                     // own: how far amps that were read may be off
constexpr double kSmallBand = 0.005;                   // own: a narrower band is none

// The places of the corners in kCorners, in the order low, likely, high of a model.
constexpr std::array<std::size_t, 3> kLowToHigh = {2, 0, 1};

struct AmpsBand {
  double low = 1.0, high = 1.0;
};

AmpsBand bandOf(const site::Known<Current>& read, double plateLow, double plateHigh) {
  if (!read) return {plateLow, plateHigh};
  if (read->isGuess() && read->value > Current{}) return {*read->low / read->value, *read->high / read->value};
  return {1.0 - kReadAmps, 1.0 + kReadAmps};
}

// Own: a machine's plate is near what it draws at work; of other loads it is the most that they ever draw.
AmpsBand ampsBandOf(const site::Inlet& inlet) { return bandOf(inlet.running, 0.8, 1.05); }
AmpsBand ampsBandOf(const site::FixedLoad& load) { return bandOf(load.running, 0.5, 1.0); }

class ModelMaker {
 public:
  ModelMaker(const site::Site& site, const site::Circuit& circuit, const PanelStates& states)
      : m_site(site), m_circuit(circuit), m_states(states) {
    const Groups::Place& place = states.wiring().groups.places.at(circuit.id);
    m_poles = {place.group, states.wiring().groups.groups[place.group].firstPoles[place.member],
               std::max<std::size_t>(1, circuit.phases.size())};
    m_model.firstPole = m_poles.first;
    m_model.poleCount = m_poles.count;
  }

  ChanceModel make(const physics::Breaker& breaker) {
    addBreaker(breaker);
    addVolts();
    addRun();
    return std::move(m_model);
  }

 private:
  std::size_t input(UnknownKind kind, const std::string& id) {
    for (std::size_t i = 0; i < m_model.inputs.size(); ++i) {
      if (m_model.inputs[i].kind == kind && m_model.inputs[i].id == id) return i;
    }
    m_model.inputs.push_back({kind, id});
    return m_model.inputs.size() - 1;
  }

  static bool isBand(double low, double high) {
    return std::abs(low - 1.0) > kSmallBand || std::abs(high - 1.0) > kSmallBand;
  }

  void addBreaker(const physics::Breaker& breaker) {
    m_model.breakerInput = input(UnknownKind::Breaker, m_circuit.id.text());
    const auto& panel = m_site.ambient.panel;
    const auto& known = panel ? panel : m_site.ambient.room;
    const auto airAt = [&](units::Temperature air) {
      return panel ? physics::BreakerAir::all(air) : physics::BreakerAir::panelIn(air);
    };
    std::array<physics::BreakerAir, 3> airs = {breakerAirOf(m_site), breakerAirOf(m_site), breakerAirOf(m_site)};
    if (known && known->isGuess()) {
      m_model.airInput = input(UnknownKind::BreakerAir, "");
      airs = {airAt(*known->low), airAt(known->value), airAt(*known->high)};
    }
    for (std::size_t i = 0; i < physics::kTripCurves.size(); ++i) {
      const physics::TripCurve curve = physics::kTripCurves[i];
      for (std::size_t a = 0; a < airs.size(); ++a) {
        m_model.curves[i][a] = physics::thermalCurve(breaker, curve, airs[a].at(curve));
      }
      m_model.quick[i] = physics::instantaneousTrip(breaker, curve);
    }
  }

  void addVolts() {
    const auto sourceV = [&](std::size_t corner) {
      return std::abs(m_states.wirings[corner].network.panels.front().sourceV.front());
    };
    m_model.voltsLow = sourceV(1) / sourceV(0);
    m_model.voltsHigh = sourceV(2) / sourceV(0);
    if (isBand(m_model.voltsLow, m_model.voltsHigh)) m_model.voltsInput = input(UnknownKind::SupplyVolts, "");
  }

  [[nodiscard]] bool isHere(const Tap& tap) const {
    const auto holds = [&](std::size_t pole) { return pole >= m_poles.first && pole < m_poles.first + m_poles.count; };
    return tap.circuit == m_poles.circuit && (holds(tap.pole) || (tap.toPole && holds(*tap.toPole)));
  }

  [[nodiscard]] bool carriesHookups(const PanelMoment& moment) const {
    const auto& hookups = m_states.states[moment.state].scene().hookups;
    return std::any_of(hookups.begin(), hookups.end(),
                       [&](const auto& one) { return one.second.load && isHere(one.second.tap); });
  }

  // The moments of the day from the first to the last in which something is plugged in on this circuit.
  void addRun() {
    const auto& moments = m_states.moments;
    std::size_t first = moments.size();
    std::size_t last = 0;
    for (std::size_t i = 0; i < moments.size(); ++i) {
      if (!moments[i].start || !carriesHookups(moments[i])) continue;
      first = std::min(first, i);
      last = i;
    }
    if (first == moments.size()) return addUnplannedRun();
    if (first > 0) m_model.before = stateOf(moments[first - 1].state);
    m_startS = moments[first].start->si();
    for (std::size_t i = first; i <= last; ++i) {
      const Duration until = moments[i].until.value_or(*moments[i].start + kUnplannedRun);
      m_model.spans.push_back({moments[i].start->si() - m_startS, until.si() - m_startS, stateOf(moments[i].state)});
    }
  }

  void addUnplannedRun() {
    const PanelMoment& always = m_states.moments.front();
    const Duration run = carriesHookups(always) ? kUnplannedRun : kStanding;
    m_model.spans.push_back({0.0, run.si(), stateOf(always.state)});
  }

  std::size_t stateOf(std::size_t panelState) {
    if (const auto known = m_stateOf.find(panelState); known != m_stateOf.end()) return known->second;
    m_model.states.push_back(makeState(m_states.states[panelState]));
    for (ModelState& state : m_model.states) state.cordNodes.resize(m_model.cords.size(), kNoInput);
    return m_stateOf.insert({panelState, m_model.states.size() - 1}).first->second;
  }

  ModelState makeState(const PanelState& panel) {
    ModelState state;
    state.circuit = panel.scene().network.circuits[m_poles.circuit];
    const network::Solution& solution = panel.likely().warm;
    for (const std::size_t phase : state.circuit.phases) {
      state.busV.push_back(solution.panelV[state.circuit.panel][phase]);
    }
    for (const timeline::HeatedBranch& heated : panel.scene().heated) {
      if (heated.circuit != m_poles.circuit) continue;
      const auto& currents = solution.circuits[heated.circuit].branches[heated.node];
      const double poleRmsA = *std::max_element(currents.poleRmsA.begin(), currents.poleRmsA.end());
      state.circuit.nodes[heated.node].branch = heated.heat->warm(poleRmsA, currents.neutralRmsA);
    }
    state.loads.resize(state.circuit.loads.size());
    for (std::size_t i = 0; i < state.loads.size(); ++i) state.loads[i].laws.fill(state.circuit.loads[i].law);
    addHookups(panel, state);
    addFixedLoads(panel, state);
    addRuns(panel, state);
    return state;
  }

  void addHookups(const PanelState& panel, ModelState& state) {
    for (const auto& [id, plugged] : panel.scene().hookups) {
      if (plugged.tap.circuit != m_poles.circuit) continue;
      for (const CordLink& link : plugged.chain)
        addCord(panel, state, plugged, link, runOf(m_site.at<site::Hookup>(id)));
      if (!plugged.load) continue;
      ModelLoad& load = state.loads[*plugged.load];
      for (std::size_t i = 0; i < kLowToHigh.size(); ++i) {
        const Scene& scene = panel.scenes[kLowToHigh[i]];
        load.laws[i] = scene.network.circuits[m_poles.circuit].loads[*scene.hookups.at(id).load].law;
      }
      if (load.laws[0] != load.laws[2]) load.dragInput = input(UnknownKind::Drag, id.text());
      const auto& hookup = m_site.at<site::Hookup>(id);
      setAmps(load, ampsBandOf(inletOf(m_site.at<site::Machine>(hookup.machine), hookup.inlet)), id.text());
    }
  }

  void setAmps(ModelLoad& load, const AmpsBand& band, const std::string& id) {
    load.ampsLow = band.low;
    load.ampsHigh = band.high;
    if (isBand(band.low, band.high)) load.ampsInput = input(UnknownKind::LoadAmps, id);
  }

  void addFixedLoads(const PanelState& panel, ModelState& state) {
    for (const auto& [id, place] : panel.scene().loads) {
      if (place.first.circuit != m_poles.circuit) continue;
      const auto& fixed = m_site.at<site::FixedLoad>(id);
      ModelLoad& load = state.loads[place.second];
      setAmps(load, ampsBandOf(fixed), id.text());
      if (fixed.cycle) load.cycle = cycleOf(fixed);
    }
  }

  std::size_t cycleOf(const site::FixedLoad& load) {
    if (const auto known = m_cycleOf.find(load.id); known != m_cycleOf.end()) return known->second;
    ModelCycle cycle{load.cycle->on.si(), load.cycle->off.si(), std::nullopt, kNoInput};
    if (load.cycle->firstOn) {
      cycle.firstOnS = load.cycle->firstOn->si() - m_startS;
    } else {
      cycle.input = input(UnknownKind::CyclePhase, load.id.text());
    }
    m_model.cycles.push_back(cycle);
    return m_cycleOf.insert({load.id, m_model.cycles.size() - 1}).first->second;
  }

  // The building's wire of the circuit: what is heated and no cord.
  void addRuns(const PanelState& panel, ModelState& state) {
    for (const timeline::HeatedBranch& heated : panel.scene().heated) {
      const bool isRun = dynamic_cast<const RunHeat*>(heated.heat.get()) != nullptr;
      if (heated.circuit == m_poles.circuit && isRun) {
        addBranch(panel, state, heated.node, UnknownKind::RunLength, m_circuit.id.text());
      }
    }
  }

  void addBranch(const PanelState& panel, ModelState& state, std::size_t node, UnknownKind kind,
                 const std::string& id) {
    const auto ohm = [&](std::size_t corner) {
      return std::abs(panel.scenes[corner].network.circuits[m_poles.circuit].nodes[node].branch.poleOhm);
    };
    if (ohm(0) <= 0.0) return;
    const double low = ohm(2) / ohm(0);
    const double high = ohm(1) / ohm(0);
    if (isBand(low, high)) state.branches.push_back({node, input(kind, id), low, high});
  }

  void addCord(const PanelState& panel, ModelState& state, const Plugged& plugged, const CordLink& link, Duration run) {
    const std::string id = link.extension ? link.extension->text() : link.hookup->text();
    const auto key = std::pair(link.extension.has_value(), id);
    auto known = m_cordOf.find(key);
    if (known == m_cordOf.end()) {
      m_model.cords.push_back(makeCord(panel, plugged, link, run));
      m_model.cords.back().input = input(UnknownKind::CordHeat, id);
      known = m_cordOf.insert({key, m_model.cords.size() - 1}).first;
    }
    state.cordNodes.resize(m_model.cords.size(), kNoInput);
    const bool isNew = state.cordNodes[known->second] == kNoInput;
    state.cordNodes[known->second] = link.node;
    if (isNew) addBranch(panel, state, link.node, UnknownKind::CordLength, id);
  }

  [[nodiscard]] const CordHeat& heatOf(const Scene& scene, std::size_t node) const {
    const auto at = std::find_if(scene.heated.begin(), scene.heated.end(), [&](const timeline::HeatedBranch& branch) {
      return branch.circuit == m_poles.circuit && branch.node == node;
    });
    CORDREACH_EXPECTS(at != scene.heated.end());
    return dynamic_cast<const CordHeat&>(*at->heat);
  }

  ModelCord makeCord(const PanelState& panel, const Plugged& plugged, const CordLink& link, Duration run) const {
    constexpr std::size_t kPoints = 13;
    constexpr double kReach = 1.6;  // of the likely current; beyond that the last stretch goes on straight
    ModelCord cord;
    cord.answer.extension = link.extension;
    cord.answer.hookup = link.hookup;
    const auto& branch = panel.likely().warm.circuits[m_poles.circuit].branches[link.node];
    const double likelyA = std::max(1.0, branch.poleRmsA[plugged.tap.pole]);
    cord.stepA = likelyA * kReach / static_cast<double>(kPoints - 1);
    cord.limitC = limitOf(link).celsius();
    for (std::size_t i = 0; i < kLowToHigh.size(); ++i) {
      const CordHeat& heat = heatOf(panel.scenes[kLowToHigh[i]], link.node);
      for (std::size_t k = 0; k < kPoints; ++k) {
        const auto end = heat.after(static_cast<double>(k) * cord.stepA * ampere, run);
        cord.endC[i].push_back((end ? end->conductor : physics::beyondModelTemperature()).celsius());
      }
    }
    return cord;
  }

  [[nodiscard]] units::Temperature limitOf(const CordLink& link) const {
    if (link.extension)
      return ratingOf(m_site.at<site::Cord>(m_site.at<site::ExtensionUse>(*link.extension).cord).make);
    const auto& hookup = m_site.at<site::Hookup>(*link.hookup);
    return ratingOf(inletOf(m_site.at<site::Machine>(hookup.machine), hookup.inlet).cord);
  }

  const site::Site& m_site;
  const site::Circuit& m_circuit;
  const PanelStates& m_states;
  Poles m_poles;
  double m_startS = 0.0;  // time of the day at which the run begins
  std::map<std::size_t, std::size_t> m_stateOf;
  std::map<site::FixedLoadId, std::size_t> m_cycleOf;
  std::map<std::pair<bool, std::string>, std::size_t> m_cordOf;
  ChanceModel m_model;
};

}  // namespace

std::optional<ChanceModel> chanceModelOf(const site::Site& site, const site::CircuitId& id,
                                         const base::Progress& progress) {
  const auto& circuit = site.at<site::Circuit>(id);
  const std::optional<physics::Breaker> breaker = breakerOf(circuit);
  if (!breaker) return std::nullopt;
  LoadBook book(site);
  const PanelStates states =
      statesOf(site, momentsOf(site), book, {panelFamilyOf(site, circuit.panel), {}, false, progress});
  if (progress.stopRequested()) return std::nullopt;
  return ModelMaker(site, circuit, states).make(*breaker);
}

}  // namespace cordreach::study
