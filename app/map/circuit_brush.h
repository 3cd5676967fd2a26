// SPDX-License-Identifier: GPL-3.0-or-later
// What painting over outlets writes down: the circuit, or that nobody knows it.
#pragma once

#include <optional>

#include "document/surveyor.h"
#include "site/ids.h"

namespace cordreach::app {

struct CircuitBrush {
  bool isChosen = false;                     // somebody has said what to paint with
  std::optional<site::CircuitId> circuit{};  // none: unknown
  Surveyor surveyor{};                       // how it is known, and by whom
};

}  // namespace cordreach::app
