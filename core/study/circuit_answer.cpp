// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/circuit_answer.h"

#include <algorithm>

namespace cordreach::study {

namespace {

using units::Duration;

constexpr Duration kStanding = 3.0 * units::hour;  // what is always on is on for at least as long as "continuous"

bool sameHookups(const CircuitLoad& a, const CircuitLoad& b) {
  const auto hookupsOf = [](const CircuitLoad& load) {
    std::vector<std::string> ids;
    for (const Share& share : load.shares) ids.push_back(share.hookup ? share.hookup->text() : share.load->text());
    std::sort(ids.begin(), ids.end());
    return ids;
  };
  return hookupsOf(a) == hookupsOf(b);
}

// How long the same things stay on, from the start of that moment.
Duration runFrom(const PanelStates& states, const std::vector<CircuitLoad>& loads, std::size_t moment) {
  const CircuitLoad& now = loads[states.moments[moment].state];
  const bool onlyStanding =
      std::none_of(now.shares.begin(), now.shares.end(), [](const Share& share) { return share.hookup.has_value(); });
  if (onlyStanding) return kStanding;
  const auto& start = states.moments[moment].start;
  if (!start) return unplannedRun();
  std::optional<Duration> until;
  for (std::size_t i = moment; i < states.moments.size(); ++i) {
    if (!sameHookups(loads[states.moments[i].state], now)) break;
    until = states.moments[i].until;
  }
  return until ? *until - *start : unplannedRun();
}

// Where the things that are on at that moment came on together: what happens elsewhere cuts the day, not their run, and
// a breaker must not be taken to have been warm from the very load that is asked about.
std::size_t firstLike(const PanelStates& states, const std::vector<CircuitLoad>& loads, std::size_t moment) {
  const CircuitLoad& now = loads[states.moments[moment].state];
  while (moment > 0 && sameHookups(loads[states.moments[moment - 1].state], now)) --moment;
  return moment;
}

template <class Load, class Answer>
CircuitDay makeDay(const PanelStates& states, Load load, Answer answer) {
  CircuitDay day;
  for (const PanelState& state : states.states) day.loads.push_back(load(state));
  for (std::size_t i = 0; i < states.moments.size(); ++i) {
    const std::size_t first = firstLike(states, day.loads, i);
    const units::Current before =
        first == 0 ? units::Current{} : day.loads[states.moments[first - 1].state].current.likely;
    const BreakerMoment moment{day.loads[states.moments[i].state], before, runFrom(states, day.loads, first)};
    day.breakers.push_back(answer(moment));
  }
  return day;
}

}  // namespace

CircuitDay dayOf(const site::Site& site, const PanelStates& states, const site::Circuit& circuit, const Poles& poles) {
  return makeDay(
      states, [&](const PanelState& state) { return loadOf(site, state, poles); },
      [&](const BreakerMoment& moment) { return breakerAnswerOf(site, circuit, moment); });
}

CircuitDay supposedDayOf(const site::Site& site, const PanelStates& states, const Poles& poles) {
  return makeDay(
      states, [&](const PanelState& state) { return loadOf(site, state, poles); },
      [&](const BreakerMoment& moment) { return supposedBreakerAnswerOf(site, moment); });
}

CircuitDay mainDayOf(const site::Site& site, const PanelStates& states, const site::Panel& panel, std::size_t index) {
  return makeDay(
      states, [&](const PanelState& state) { return mainLoadOf(site, state, index); },
      [&](const BreakerMoment& moment) { return mainAnswerOf(site, panel, moment); });
}

CircuitAnswer worstOf(const site::Circuit& circuit, const PanelStates& states, const CircuitDay& day) {
  std::size_t worst = 0;
  for (std::size_t i = 1; i < day.breakers.size(); ++i) {
    if (worse(day.breakers[i], day.breakers[worst])) worst = i;
  }
  const CircuitLoad& load = day.loads[states.moments[worst].state];
  return {circuit.id,      states.moments[worst].start, load.current,        load.likely,          load.neutral,
          load.plateSum(), load.continuousSum(),        day.breakers[worst], load.wireTemperature, load.shares,
          load.together};
}

}  // namespace cordreach::study
