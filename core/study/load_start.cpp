// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/load_start.h"

#include <algorithm>

#include "study/day_loads.h"
#include "study/start_study.h"

namespace cordreach::study {

namespace {

bool hasBoth(const CircuitLoad& load, const site::FixedLoadId& id) {
  const auto has = [&](auto test) { return std::any_of(load.shares.begin(), load.shares.end(), test); };
  return has([](const Share& share) { return share.hookup.has_value(); }) &&
         has([&](const Share& share) { return share.load == id; });
}

// The first of the moments in which the circuit carries most; none: it never carries both.
const PanelMoment* fullestWith(const site::FixedLoadId& id, const PanelStates& states, const CircuitDay& day) {
  const PanelMoment* fullest = nullptr;
  for (const PanelMoment& moment : states.moments) {
    const CircuitLoad& load = day.loads[moment.state];
    if (!hasBoth(load, id)) continue;
    if (fullest == nullptr || load.current.likely > day.loads[fullest->state].current.likely) fullest = &moment;
  }
  return fullest;
}

}  // namespace

std::vector<LoadStart> loadStartsOf(const site::Site& site, const PanelStates& states,
                                    const std::map<site::CircuitId, CircuitDay>& days) {
  std::vector<LoadStart> starts;
  for (const auto& load : site.all<site::FixedLoad>()) {
    const auto day = days.find(load.circuit);
    if (!load.cycle || load.off || day == days.end()) continue;
    const PanelMoment* moment = fullestWith(load.id, states, day->second);
    if (moment == nullptr) continue;
    const PanelState& state = states.states[moment->state];
    const Tap& tap = state.scene().loads.at(load.id).first;
    if (!startPeakOf(startMachineOf(load, nominalOf(states.wiring(), tap)))) continue;
    auto study = startStudyOf(site, states, state, load);
    if (study) starts.push_back({load.id, load.circuit, moment->start, std::move(study->answer)});
  }
  return starts;
}

}  // namespace cordreach::study
