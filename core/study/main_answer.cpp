// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/main_answer.h"

#include "network/phase_amps.h"
#include "study/circuit_answer.h"

namespace cordreach::study {

namespace {

MainAnswer answerOf(const site::Panel& panel, std::size_t index, const PanelStates& states, const CircuitDay& day) {
  const std::size_t worst = worstMomentOf(day);
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
