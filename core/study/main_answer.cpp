// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/main_answer.h"

#include "network/phase_amps.h"
#include "study/circuit_answer.h"

namespace cordreach::study {

namespace {

// A short moment at more amps must not hide a long one that trips.
std::size_t worstOf(const CircuitDay& day) {
  std::size_t worst = 0;
  for (std::size_t i = 1; i < day.breakers.size(); ++i) {
    const WithinRun does = withinRun(day.breakers[i]);
    const WithinRun before = withinRun(day.breakers[worst]);
    if (does > before || (does == before && worse(day.breakers[i], day.breakers[worst]))) worst = i;
  }
  return worst;
}

MainAnswer answerOf(const site::Panel& panel, std::size_t index, const PanelStates& states, const CircuitDay& day) {
  const std::size_t worst = worstOf(day);
  const Scene& scene = states.states[states.moments[worst].state].scene();
  MainAnswer answer{panel.id, day.breakers[worst], {}, states.moments[worst].start};
  for (const auto& [id, plugged] : scene.hookups) {
    if (plugged.load && network::hangsOn(scene.network, plugged.tap.circuit, index)) answer.hookups.push_back(id);
  }
  return answer;
}

}  // namespace

std::vector<MainAnswer> mainsOf(const site::Site& site, const PanelStates& states) {
  std::vector<MainAnswer> mains;
  for (const auto& [id, index] : states.wiring().panels) {
    const auto& panel = site.at<site::Panel>(id);
    if (!panel.mainRating) continue;
    MainAnswer answer = answerOf(panel, index, states, mainDayOf(site, states, panel, index));
    if (withinRun(answer.breaker) != WithinRun::Holds) mains.push_back(std::move(answer));
  }
  return mains;
}

}  // namespace cordreach::study
