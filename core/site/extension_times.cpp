// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/extension_times.h"

#include <algorithm>

namespace cordreach::site {

ExtensionTimes::ExtensionTimes(const Site& site) {
  for (const Hookup& hookup : site.all<Hookup>()) {
    const auto* socket = std::get_if<CordSocket>(&hookup.socket);
    if (socket != nullptr) m_states[socket->cord].hookups.push_back(&hookup);
  }
  for (const ExtensionUse& use : site.all<ExtensionUse>()) {
    m_states.try_emplace(use.cord);
    const auto* socket = std::get_if<CordSocket>(&use.socket);
    if (socket != nullptr) m_states[socket->cord].uses.push_back(&use);
  }
}

// One answer a cord, not a use: a cord used a thousand times a day costs no more than its pluggings.
ExtensionTimes::State& ExtensionTimes::settled(const CordId& cord, int level) {
  State& state = m_states[cord];
  if (state.done || state.open) return state;
  if (level > kLongestChain) {
    state.height = kLongestChain + 1;
    return state;
  }
  state.open = true;
  Spans spans;
  for (const Hookup* hookup : state.hookups) spans.push_back(hoursOrAlways(hookup->hours));
  for (const ExtensionUse* use : state.uses) {
    const State& behind = settled(use->cord, level + 1);
    state.height = std::max(state.height, behind.height + 1);
    if (use->hours) {
      spans.push_back(*use->hours);
    } else if (!behind.open) {
      spans.insert(spans.end(), behind.spans.begin(), behind.spans.end());
    }
  }
  state.spans = merged(std::move(spans));
  state.open = false;
  state.done = true;
  return state;
}

Spans ExtensionTimes::spansOf(const ExtensionUse& use) {
  if (use.hours) return {*use.hours};
  return settled(use.cord, 0).spans;
}

bool ExtensionTimes::tooLong(const CordId& cord) { return settled(cord, 0).height > kLongestChain; }

}  // namespace cordreach::site
