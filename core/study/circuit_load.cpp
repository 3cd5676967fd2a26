// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/circuit_load.h"

#include <algorithm>
#include <numeric>
#include <set>

#include "network/phase_amps.h"
#include "physics/charger.h"
#include "study/assumptions.h"
#include "study/branch_heat.h"
#include "study/coincidence.h"

namespace cordreach::study {

namespace {

using units::ampere;
using units::Current;

bool onPoles(const Tap& tap, const Poles& poles) {
  const auto holds = [&](std::size_t pole) { return pole >= poles.first && pole < poles.first + poles.count; };
  return tap.circuit == poles.circuit && (holds(tap.pole) || (tap.toPole && holds(*tap.toPole)));
}

double largestPoleA(const timeline::Settled& settled, const Poles& poles) {
  const auto& currents = settled.warm.circuits[poles.circuit].branches.front().poleRmsA;
  double largest = 0.0;
  for (std::size_t i = 0; i < poles.count; ++i) largest = std::max(largest, currents[poles.first + i]);
  return largest;
}

Share shareOf(const site::Site& site, const site::HookupId& id, double rmsA) {
  const auto& hookup = site.at<site::Hookup>(id);
  const auto& inlet = inletOf(site.at<site::Machine>(hookup.machine), hookup.inlet);
  return {id, std::nullopt, rmsA * ampere, plateOf(inlet), runOf(hookup) >= physics::kContinuous, false};
}

// What cycles is not on for long at a time; a charger is on at its largest only until its battery is nearly full.
bool isContinuous(const site::FixedLoad& load) {
  const bool longHours = !load.hours || load.hours->length() >= physics::kContinuous;
  const bool fullForLong = !load.charge || physics::isContinuous({load.charge->constant, load.charge->taper});
  return !load.cycle && longHours && fullForLong;
}

Share shareOf(const site::FixedLoad& load, double rmsA) {
  const bool continuous = isContinuous(load);
  return {std::nullopt, load.id, rmsA * ampere, currentOf(load), continuous, load.cycle.has_value()};
}

template <class DrawsHere>
std::vector<Share> sharesOf(const site::Site& site, const PanelState& state, DrawsHere drawsHere) {
  std::vector<Share> shares;
  const auto& solution = state.likely().warm;
  for (const auto& [id, plugged] : state.scene().hookups) {
    if (!plugged.load || !drawsHere(plugged.tap)) continue;
    shares.push_back(shareOf(site, id, solution.circuits[plugged.tap.circuit].loads[*plugged.load].totalRmsA));
  }
  for (const auto& [id, place] : state.scene().loads) {
    if (!drawsHere(place.first)) continue;
    const double rmsA = solution.circuits[place.first.circuit].loads[place.second].totalRmsA;
    shares.push_back(shareOf(site.at<site::FixedLoad>(id), rmsA));
  }
  std::stable_sort(shares.begin(), shares.end(), [](const Share& a, const Share& b) { return a.current > b.current; });
  return shares;
}

// By the shares and the largest current, which stand already.
void addComingAndGoing(const site::Site& site, CircuitLoad& load) {
  std::vector<ComesAndGoes> cycling;
  for (const Share& share : load.shares) {
    if (!share.cycling) continue;
    const site::Cycle& cycle = *site.at<site::FixedLoad>(*share.load).cycle;
    cycling.push_back({share.current, cycle.onFraction()});
    load.longestCycle = std::max(load.longestCycle.value_or(cycle.on), cycle.on);
  }
  const Coincidence coincidence = coincidenceOf(cycling);
  // Taking amps off arithmetically leaves too little rather than too much when power factors differ.
  load.withoutCycling = std::max(Current{}, load.current.likely - coincidence.worst);
  load.likely = std::max(Current{}, load.current.likely - (coincidence.worst - coincidence.likely));
  load.together = coincidence.together;
}

units::Temperature hottestWire(const site::Site& site, const PanelState& state, const Poles& poles) {
  units::Temperature hottest = wallOf(site);
  for (const auto& heated : state.scene().heated) {
    const auto* run = dynamic_cast<const RunHeat*>(heated.heat.get());
    if (heated.circuit != poles.circuit || run == nullptr) continue;
    const auto& currents = state.likely().warm.circuits[heated.circuit].branches[heated.node].poleRmsA;
    hottest = std::max(hottest, run->temperatureAt(*std::max_element(currents.begin(), currents.end())));
  }
  return hottest;
}

template <class Pick>
Current sumOf(const std::vector<Share>& shares, Pick pick) {
  return std::accumulate(shares.begin(), shares.end(), Current{},
                         [&](Current sum, const Share& share) { return sum + pick(share); });
}

}  // namespace

Current CircuitLoad::plateSum() const {
  return sumOf(shares, [](const Share& share) { return share.plate; });
}

Current CircuitLoad::continuousSum() const {
  return sumOf(shares, [](const Share& share) { return share.continuous ? share.plate : Current{}; });
}

CircuitLoad loadOf(const site::Site& site, const PanelState& state, const Poles& poles) {
  CircuitLoad load{.wireTemperature = hottestWire(site, state, poles)};
  load.current = bandOf(largestPoleA(state.settled[0], poles) * ampere, largestPoleA(state.settled[1], poles) * ampere,
                        largestPoleA(state.settled[2], poles) * ampere);
  load.neutral = state.likely().warm.circuits[poles.circuit].branches.front().neutralRmsA * ampere;
  load.shares = sharesOf(site, state, [&](const Tap& tap) { return onPoles(tap, poles); });
  addComingAndGoing(site, load);
  return load;
}

CircuitLoad mainLoadOf(const site::Site& site, const PanelState& state, std::size_t panel) {
  const network::Network& network = state.scene().network;
  const auto largest = [&](std::size_t corner) {
    return network::largestPhaseA(network, state.settled[corner].warm.circuits, panel) * ampere;
  };
  CircuitLoad load{.wireTemperature = wallOf(site)};
  load.current = bandOf(largest(0), largest(1), largest(2));
  std::set<std::pair<std::size_t, std::size_t>> cycling;
  for (const auto& [id, place] : state.scene().loads) {
    if (site.at<site::FixedLoad>(id).cycle) cycling.insert({place.first.circuit, place.second});
  }
  load.shares = sharesOf(site, state, [&](const Tap& tap) { return network::hangsOn(network, tap.circuit, panel); });
  addComingAndGoing(site, load);
  // Phase by phase: what cycles on one phase leaves nothing off another.
  load.withoutCycling = ampere * network::largestPhaseA(network, state.likely().warm.circuits, panel, {},
                                                        [&](std::size_t circuit, std::size_t one) {
                                                          return !cycling.contains({circuit, one});
                                                        });
  return load;
}

}  // namespace cordreach::study
