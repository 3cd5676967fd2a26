// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/start_study.h"

#include <algorithm>
#include <array>

#include "physics/breaker_curve.h"
#include "physics/load_model.h"
#include "physics/start_trip.h"
#include "study/assess.h"
#include "study/assumptions.h"
#include "study/breaker_answer.h"
#include "study/load_book.h"
#include "study/machine_plate.h"
#include "study/moments.h"
#include "study/pad_in_use.h"
#include "study/panel_family.h"
#include "study/start_scene.h"

namespace cordreach::study {

namespace {

using Phasor = std::complex<double>;
using physics::StartEdge;
using physics::StartMachine;
using physics::StartRun;
using units::volt;

// A plate that fits no model of its class still starts as its class does.
std::optional<StartRun> runOf(StartMachine machine, StartEdge edge, const physics::Thevenin& supply) {
  auto run = physics::startOf(machine, edge, supply);
  if (run) return std::move(run).value();
  machine.plate.shaftPower.reset();
  machine.plate.runningCurrent.reset();
  machine.plate.lockedRotorCurrent.reset();
  machine.codeLetter.reset();
  run = physics::startOf(machine, edge, supply);
  return run ? std::optional(std::move(run).value()) : std::nullopt;
}

// What is switched on: a hookup's machine or something fixed.
struct Starting {
  Tap tap;
  std::size_t load = 0;                    // of the tap's circuit in the scene
  Tap outletTap;                           // where its chain of cords ends
  std::optional<site::CircuitId> circuit;  // none: unknown
  std::optional<site::HookupId> hookup;    // one of the two
  std::optional<site::FixedLoadId> fixed;
  StartMachine likely, easy, hard;
};

class Starter {
 public:
  Starter(const site::Site& site, const PanelStates& states, const PanelState& state, const Starting& starting)
      : m_site(site),
        m_states(states),
        m_state(state),
        m_starting(starting),
        m_scene(state, starting.tap, starting.load) {}

  std::optional<StartStudy> study() {
    const auto run = runOf(m_starting.likely, StartEdge::Typical, m_scene.supply());
    const auto easy = runOf(m_starting.easy, StartEdge::Low, m_scene.supply());
    const auto hard = runOf(m_starting.hard, StartEdge::High, m_scene.supply());
    if (!run || !easy || !hard) return std::nullopt;
    StartStudy study{{}, m_scene.supply(), *run, *easy, *hard, {}};
    m_peaksA = {peakOf(*run), peakOf(*hard), peakOf(*easy)};
    fill(study);
    study.answer.tipped = physics::startsTipped(m_starting.likely);
    study.answer.inertiaStated = m_starting.likely.inertiaKgM2.has_value();
    addTrip(*run, study.answer);
    addDips(study.answer);
    return study;
  }

  // After the study.
  [[nodiscard]] std::vector<OutletDip> outletDips() const {
    std::vector<OutletDip> dips;
    for (const auto& outlet : m_site.all<site::Outlet>()) {
      for (const auto& contact : outlet.contacts) {
        const auto tap = contact.dead ? std::nullopt : tapOf(m_states.wiring(), m_site, outlet, contact);
        if (tap) dips.push_back({outlet.id, contact.name, dipAt(*tap)});
      }
    }
    return dips;
  }

 private:
  static Phasor peakOf(const StartRun& run) {
    const auto at = std::max_element(
        run.samples.begin(), run.samples.end(),
        [](const physics::StartSample& a, const physics::StartSample& b) { return a.totalRmsA < b.totalRmsA; });
    return at->currentA;
  }

  void fill(StartStudy& study) const {
    StartAnswer& answer = study.answer;
    answer.peak = bandOf(study.likely.peak, study.hard.peak, study.easy.peak);
    answer.settled = bandOf(study.likely.settled, study.hard.settled, study.easy.settled);
    answer.time = {study.likely.time95, study.easy.time95, study.hard.time95};
    answer.lowest = bandOf(study.likely.lowest, study.hard.lowest, study.easy.lowest);
    answer.outlet = dipAt(m_starting.outletTap);
    answer.panel =
        dipOf([this](Phasor currentA) { return m_scene.busV(m_starting.outletTap, currentA); }, m_starting.outletTap);
  }

  template <class VoltsAt>
  Dip dipOf(VoltsAt voltsAt, const Tap& tap) const {
    const auto during = [&](std::size_t end) { return voltsAt(m_peaksA[end]) * volt; };
    return {voltsAt(0.0) * volt, bandOf(during(0), during(1), during(2)), nominalOf(m_states.wiring(), tap)};
  }

  Dip dipAt(const Tap& tap) const {
    return dipOf([&](Phasor currentA) { return m_scene.voltageV(tap, currentA); }, tap);
  }

  // Of its circuit's breaker; of an outlet whose breaker nobody knows, the strictest that is common.
  void addTrip(const StartRun& run, StartAnswer& answer) const {
    std::optional<physics::Breaker> breaker = kStrictestBreaker;
    if (m_starting.circuit) breaker = breakerOf(m_site.at<site::Circuit>(*m_starting.circuit));
    if (!breaker) return;
    const auto before = units::Current::fromSi(std::abs(m_scene.othersA(0.0)));
    // What would trip it without the machine is told elsewhere.
    const auto carrying = std::min(before, breaker->rating);
    const Phasor othersA = m_scene.othersA(m_peaksA.front());
    answer.trip = physics::startTrip(run, {*breaker, breakerAirOf(m_site), carrying, othersA});
  }

  void addDips(StartAnswer& answer) const {
    std::vector<LoadDip>& dips = answer.dips;
    for (const auto& [id, other] : m_state.scene().hookups) {
      if (id != m_starting.hookup && other.load) dips.push_back({id, {}, dipAt(other.tap)});
    }
    for (const auto& [id, place] : m_state.scene().loads) {
      if (id != m_starting.fixed) dips.push_back({{}, id, dipAt(place.first)});
    }
    std::stable_sort(dips.begin(), dips.end(),
                     [](const LoadDip& a, const LoadDip& b) { return a.dip.share() > b.dip.share(); });
  }

  static constexpr physics::Breaker kStrictestBreaker{15.0 * units::ampere, physics::BreakerKind::ThermalMagnetic};

  const site::Site& m_site;
  const PanelStates& m_states;
  const PanelState& m_state;
  const Starting& m_starting;
  StartScene m_scene;
  std::array<Phasor, 3> m_peaksA{};  // of the likely, the hard and the easy start
};

StartMachine machineAt(const site::Site& site, const site::Hookup& hookup, units::Voltage nominal, Corner corner) {
  StartMachine machine = startMachineOf(site, hookup, nominal);
  machine.plate.torqueFactor = dragAt(padDragOf(site, hookup, machine.plate).factor, corner);
  const auto& inertia = site.at<site::Machine>(hookup.machine).inertiaKgM2;
  if (inertia) machine.inertiaKgM2 = moreIsWorse(*inertia, corner);
  return machine;
}

std::optional<Starting> startingAt(const site::Site& site, const PanelStates& states, const PanelState& state,
                                   const site::Hookup& hookup) {
  const auto plugged = state.scene().hookups.find(hookup.id);
  if (plugged == state.scene().hookups.end() || !plugged->second.load) return std::nullopt;
  const Plugged& found = plugged->second;
  const units::Voltage nominal = nominalOf(states.wiring(), found.tap);
  return Starting{found.tap,
                  *found.load,
                  found.outletTap,
                  found.circuit,
                  hookup.id,
                  {},
                  machineAt(site, hookup, nominal, Corner::Likely),
                  machineAt(site, hookup, nominal, Corner::Favourable),
                  machineAt(site, hookup, nominal, Corner::Adverse)};
}

}  // namespace

physics::StartMachine startMachineOf(const site::Site& site, const site::Hookup& hookup, units::Voltage nominal) {
  const auto& machine = site.at<site::Machine>(hookup.machine);
  const site::Inlet& inlet = inletOf(machine, hookup.inlet);
  StartMachine start{nameplateOf(site, hookup, nominal), machine.kind};
  if (machine.inertiaKgM2) start.inertiaKgM2 = machine.inertiaKgM2->value;
  if (inlet.codeLetter.size() == 1) start.codeLetter = inlet.codeLetter.front();
  return start;
}

std::optional<StartStudy> startStudyOf(const site::Site& site, const PanelStates& states, const PanelState& state,
                                       const site::Hookup& hookup) {
  const auto starting = startingAt(site, states, state, hookup);
  return starting ? Starter(site, states, state, *starting).study() : std::nullopt;
}

physics::StartMachine startMachineOf(const site::FixedLoad& load, units::Voltage nominal) {
  StartMachine machine{};
  machine.plate.model = physics::modelFor(load.loadClass);
  machine.plate.voltage = nominal;
  machine.plate.current = currentOf(load);
  return machine;
}

std::optional<StartStudy> startStudyOf(const site::Site& site, const PanelStates& states, const PanelState& state,
                                       const site::FixedLoad& load) {
  const auto place = state.scene().loads.find(load.id);
  if (place == state.scene().loads.end()) return std::nullopt;
  const Tap& tap = place->second.first;
  const StartMachine machine = startMachineOf(load, nominalOf(states.wiring(), tap));
  const Starting starting{tap, place->second.second, tap, load.circuit, {}, load.id, machine, machine, machine};
  return Starter(site, states, state, starting).study();
}

void addStart(const site::Site& site, const PanelStates& states, HookupAnswer& answer) {
  const auto at = std::find_if(states.moments.begin(), states.moments.end(),
                               [&](const PanelMoment& moment) { return moment.start == answer.moment; });
  if (at == states.moments.end()) return;
  const auto study = startStudyOf(site, states, states.states[at->state], site.at<site::Hookup>(answer.id));
  if (study) answer.start = study->answer;
}

std::optional<StartStudy> startStudyOf(const site::Site& site, const site::Hookup& hookup) {
  StudyOptions options;
  options.likelyOnly = true;
  const Answer answer = assess(site, options);
  const HookupAnswer* of = answer.find(hookup.id);
  if (of == nullptr) return std::nullopt;
  const std::vector<Moment> moments = momentsOf(site);
  const auto moment =
      std::find_if(moments.begin(), moments.end(), [&](const Moment& one) { return one.start == of->moment; });
  if (moment == moments.end()) return std::nullopt;
  LoadBook book(site);
  for (const auto& [root, panels] : panelFamiliesOf(site)) {
    const PanelStates states = statesOf(site, {*moment}, book, {panels, {}, true, {}});
    const auto starting = startingAt(site, states, states.states.front(), hookup);
    if (!starting) continue;
    Starter starter(site, states, states.states.front(), *starting);
    auto study = starter.study();
    if (study) study->outlets = starter.outletDips();
    return study;
  }
  return std::nullopt;
}

}  // namespace cordreach::study
