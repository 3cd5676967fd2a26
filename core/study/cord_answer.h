// SPDX-License-Identifier: GPL-3.0-or-later
// A cord of a hookup's chain in one state of its panel: what goes through it and how hot it gets.
#pragma once

#include "site/site.h"
#include "study/answer.h"
#include "study/panel_states.h"

namespace cordreach::study {

struct CordContext {
  const PanelState& state;
  const Plugged& plugged;
  std::optional<units::Duration> cutOff;  // when even the latest curve has tripped; none: never, or not to be relied on
  bool looseContact = false;              // of the outlet it starts from
};

// Of the chain's link with that index.
[[nodiscard]] CordAnswer cordAnswerOf(const site::Site& site, const CordContext& context, std::size_t link);

// True when `a` is worse news than `b`: beyond the model, then hotter, then more current.
[[nodiscard]] bool worse(const CordAnswer& a, const CordAnswer& b);

}  // namespace cordreach::study
