// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/panel_states.h"

#include <map>
#include <string>

namespace cordreach::study {

namespace {

// Two moments with the same signature are the same state of these panels.
std::string signatureOf(const Scene& scene) {
  std::string signature;
  for (const auto& [id, plugged] : scene.hookups) {
    signature += id.text() + (plugged.load ? "+" : "-");
    for (const CordLink& link : plugged.chain) signature += link.extension ? link.extension->text() + ">" : ">";
  }
  signature += "|";
  for (const auto& [id, place] : scene.loads) signature += id.text() + ",";
  return signature;
}

std::size_t cornersOf(const PanelStudyOptions& options) { return options.likelyOnly ? 1 : kCorners.size(); }

PanelState solveState(const site::Site& site, const PanelStates& states, const Moment& moment, LoadBook& book,
                      const PanelStudyOptions& options) {
  PanelState state;
  timeline::SettleOptions settleOptions;
  settleOptions.solve.progress = options.progress;
  for (std::size_t i = 0; i < cornersOf(options); ++i) {
    state.scenes[i] = sceneOf(site, states.wirings[i], moment, kCorners[i], book);
    state.settled[i] = timeline::settle(state.scenes[i].network, state.scenes[i].heated, settleOptions);
  }
  for (std::size_t i = cornersOf(options); i < kCorners.size(); ++i) {
    state.scenes[i] = state.scenes.front();
    state.settled[i] = state.settled.front();
  }
  return state;
}

}  // namespace

PanelStates statesOf(const site::Site& site, const std::vector<Moment>& moments, LoadBook& book,
                     const PanelStudyOptions& options) {
  PanelStates result;
  for (std::size_t i = 0; i < cornersOf(options); ++i) {
    result.wirings[i] = wire(site, {kCorners[i], options.panels, options.lostNeutral});
  }
  for (std::size_t i = cornersOf(options); i < kCorners.size(); ++i) result.wirings[i] = result.wirings.front();
  std::map<std::string, std::size_t> known;
  for (std::size_t i = 0; i < moments.size() && !options.progress.stopRequested(); ++i) {
    const Scene scene = sceneOf(site, result.wirings.front(), moments[i], Corner::Likely, book);
    const auto [place, isNew] = known.insert({signatureOf(scene), result.states.size()});
    if (isNew) result.states.push_back(solveState(site, result, moments[i], book, options));
    const bool last = i + 1 == moments.size();
    result.moments.push_back({moments[i].start, last ? std::nullopt : moments[i + 1].start, place->second});
  }
  return result;
}

}  // namespace cordreach::study
