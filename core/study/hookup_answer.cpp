// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/hookup_answer.h"

#include <algorithm>
#include <cmath>

#include "study/assumptions.h"
#include "study/cord_answer.h"
#include "study/fault_answer.h"
#include "study/start_study.h"

namespace cordreach::study {

namespace {

using network::Phasor;
using units::ampere;
using units::volt;
using units::Voltage;

constexpr std::size_t kAdverse = 1;
static_assert(kCorners[kAdverse] == Corner::Adverse);

Phasor nodeVoltage(const network::Solution& solution, const Tap& tap) {
  const auto& poles = solution.circuits[tap.circuit].nodeV[tap.node];
  return tap.toPole ? poles[tap.pole] - poles[*tap.toPole] : poles[tap.pole];
}

Voltage busVoltage(const PanelState& state, const Tap& tap) {
  const network::Circuit& circuit = state.scene().network.circuits[tap.circuit];
  const auto& bus = state.likely().warm.panelV[circuit.panel];
  const Phasor to = tap.toPole ? bus[circuit.phases[*tap.toPole]] : Phasor{};
  return std::abs(bus[circuit.phases[tap.pole]] - to) * volt;
}

const network::LoadSolution* loadIn(const network::Solution& solution, const Plugged& plugged) {
  return plugged.load ? &solution.circuits[plugged.tap.circuit].loads[*plugged.load] : nullptr;
}

// Loop impedance from the open-circuit source to the outlet, as warm as the state left it.
double loopOhm(const PanelState& state, const Plugged& plugged) {
  const network::Network& network = state.scene().network;
  const network::Circuit& circuit = network.circuits[plugged.tap.circuit];
  Phasor loop{};
  const auto add = [&](const network::Branch& branch) {
    loop += branch.poleOhm + (plugged.tap.toPole ? branch.poleOhm : branch.neutralOhm);
  };
  for (std::size_t node = plugged.outletTap.node;; node = circuit.nodes[node].parent) {
    add(circuit.nodes[node].branch);
    if (node == 0) break;
  }
  for (std::optional<std::size_t> panel = circuit.panel; panel; panel = network.panels[*panel].fedFrom) {
    add(network.panels[*panel].feeder);
  }
  return std::abs(loop);
}

class HookupDay {
 public:
  HookupDay(const site::Site& site, const PanelStates& states, const site::Hookup& hookup)
      : m_site(site), m_states(states), m_hookup(hookup) {}

  void take(std::size_t moment, const CircuitDay* day) {
    const PanelState& state = m_states.states[m_states.moments[moment].state];
    const auto found = state.scene().hookups.find(m_hookup.id);
    if (found == state.scene().hookups.end()) return;
    const Plugged& plugged = found->second;
    if (!m_answer) begin(plugged);
    if (day != nullptr) takeBreaker(day->breakers[moment]);
    takeVolts(moment, state, plugged);
    takeCords(state, plugged, day != nullptr ? &day->breakers[moment] : nullptr);
    m_answer->socketPlateSum = std::max(m_answer->socketPlateSum, socketPlates(state, plugged));
  }

  [[nodiscard]] std::optional<HookupAnswer> answer() && { return std::move(m_answer); }

 private:
  void begin(const Plugged& plugged) {
    m_answer = blankAnswerOf(m_hookup);
    m_answer->outlet = plugged.outlet;
    m_answer->contact = plugged.contact;
    m_answer->circuit = plugged.circuit;
    m_answer->nominal = nominalOf(m_states.wiring(), plugged.tap);
  }

  void takeBreaker(const BreakerAnswer& breaker) {
    if (!m_hasBreaker || worse(breaker, m_answer->breaker)) m_answer->breaker = breaker;
    m_hasBreaker = true;
  }

  void takeVolts(std::size_t moment, const PanelState& state, const Plugged& plugged) {
    const auto voltsAt = [&](std::size_t corner) {
      return std::abs(nodeVoltage(state.settled[corner].warm, plugged.tap)) * volt;
    };
    const auto dropAt = [&](std::size_t corner) {
      return openCircuitOf(m_states.wirings[corner], plugged.tap) - voltsAt(corner);
    };
    const auto voltage = bandOf(voltsAt(0), voltsAt(1), voltsAt(2));
    const bool first = !m_hasVolts;
    m_hasVolts = true;
    takeLoad(state, plugged);
    if (!first && voltage.likely >= m_answer->voltage.likely) return;
    m_answer->moment = m_states.moments[moment].start;
    m_answer->voltage = voltage;
    m_answer->drop = bandOf(dropAt(0), dropAt(1), dropAt(2));
    takeDropParts(state, plugged);
    takeSpeed(state, plugged);
  }

  void takeDropParts(const PanelState& state, const Plugged& plugged) {
    const Voltage outlet = std::abs(nodeVoltage(state.likely().warm, plugged.outletTap)) * volt;
    m_answer->branchDrop = busVoltage(state, plugged.outletTap) - outlet;
    m_answer->outletDrop = openCircuitOf(m_states.wiring(), plugged.outletTap) - outlet;
    const auto* load = loadIn(state.likely().warm, plugged);
    m_answer->dropWithoutOthers = (load != nullptr ? std::abs(load->currentA) : 0.0) * loopOhm(state, plugged) * volt;
  }

  void takeLoad(const PanelState& state, const Plugged& plugged) {
    if (!plugged.load) return;
    const auto ampsAt = [&](std::size_t corner) {
      return loadIn(state.settled[corner].warm, state.scenes[corner].hookups.at(m_hookup.id))->totalRmsA * ampere;
    };
    const auto current = bandOf(ampsAt(0), ampsAt(1), ampsAt(2));
    if (current.likely > m_answer->current.likely) m_answer->current = current;
    const bool cold = loadIn(state.likely().cold, plugged)->stalled;
    m_answer->stalledCold |= cold;
    m_answer->stalledWarm |= !cold && loadIn(state.likely().warm, plugged)->stalled;
    const Plugged& adverse = state.scenes[kAdverse].hookups.at(m_hookup.id);
    m_answer->stalledAdverse |= loadIn(state.settled[kAdverse].cold, adverse)->stalled;
    m_answer->stalledAdverse |= loadIn(state.settled[kAdverse].warm, adverse)->stalled;
  }

  void takeSpeed(const PanelState& state, const Plugged& plugged) {
    if (!plugged.load || !loadIn(state.likely().warm, plugged)->point.speedRpm) return;
    const auto rpmAt = [&](std::size_t corner) {
      const auto* load = loadIn(state.settled[corner].warm, state.scenes[corner].hookups.at(m_hookup.id));
      return load->stalled ? 0.0 : load->point.speedRpm.value_or(0.0);
    };
    m_answer->speedRpm = bandOf(rpmAt(0), rpmAt(1), rpmAt(2));
  }

  void takeCords(const PanelState& state, const Plugged& plugged, const BreakerAnswer* breaker) {
    const CordContext context{state, plugged, cutOffOf(plugged, breaker), isLoose(plugged)};
    for (std::size_t i = 0; i < plugged.chain.size(); ++i) {
      CordAnswer cord = cordAnswerOf(m_site, context, i);
      if (m_answer->cords.size() <= i) {
        m_answer->cords.push_back(std::move(cord));
      } else if (worse(cord, m_answer->cords[i])) {
        m_answer->cords[i] = std::move(cord);
      }
    }
  }

  // A breaker that is unknown, or known not to be relied on, cuts nothing off.
  std::optional<units::Duration> cutOffOf(const Plugged& plugged, const BreakerAnswer* breaker) const {
    if (!plugged.circuit || breaker == nullptr || !breaker->trip) return std::nullopt;
    if (m_site.at<site::Circuit>(*plugged.circuit).mayNotTrip) return std::nullopt;
    return breaker->trip->latest;
  }

  const site::Contact* contactOf(const Plugged& plugged) const {
    const auto& contacts = m_site.at<site::Outlet>(plugged.outlet).contacts;
    const auto at = std::find_if(contacts.begin(), contacts.end(),
                                 [&](const site::Contact& contact) { return contact.name == plugged.contact; });
    return at == contacts.end() ? nullptr : &*at;
  }

  bool isLoose(const Plugged& plugged) const {
    const site::Contact* contact = contactOf(plugged);
    return contact != nullptr && contact->loose;
  }

  units::Current socketPlates(const PanelState& state, const Plugged& plugged) const {
    units::Current sum;
    for (const auto& [id, other] : state.scene().hookups) {
      if (!other.load || other.outlet != plugged.outlet || other.contact != plugged.contact) continue;
      const auto& hookup = m_site.at<site::Hookup>(id);
      sum += plateOf(inletOf(m_site.at<site::Machine>(hookup.machine), hookup.inlet));
    }
    return sum;
  }

  const site::Site& m_site;
  const PanelStates& m_states;
  const site::Hookup& m_hookup;
  std::optional<HookupAnswer> m_answer;
  bool m_hasBreaker = false;
  bool m_hasVolts = false;
};

}  // namespace

HookupAnswer blankAnswerOf(const site::Hookup& hookup) {
  return {.id = hookup.id, .machine = hookup.machine, .inlet = hookup.inlet, .run = runOf(hookup)};
}

std::optional<HookupAnswer> hookupAnswerOf(const site::Site& site, const PanelStates& states,
                                           const site::Hookup& hookup,
                                           const std::map<std::size_t, CircuitDay>& supposedDays,
                                           const std::map<site::CircuitId, CircuitDay>& days) {
  HookupDay hookupDay(site, states, hookup);
  for (std::size_t i = 0; i < states.moments.size(); ++i) {
    const PanelState& state = states.states[states.moments[i].state];
    const auto plugged = state.scene().hookups.find(hookup.id);
    if (plugged == state.scene().hookups.end()) continue;
    const CircuitDay* day =
        plugged->second.circuit ? &days.at(*plugged->second.circuit) : &supposedDays.at(plugged->second.tap.circuit);
    hookupDay.take(i, day);
  }
  auto answer = std::move(hookupDay).answer();
  if (answer) addStart(site, states, *answer);
  if (answer) addFaults(site, states, *answer);
  return answer;
}

}  // namespace cordreach::study
