// SPDX-License-Identifier: GPL-3.0-or-later
// A site is studied three times: as it most likely is, and with every uncertain input at its worse and its better end.
#pragma once

#include "site/known.h"

namespace cordreach::study {

enum class Corner { Likely, Adverse, Favourable };

// Of a quantity of which more is worse: a length, an impedance.
template <class T>
[[nodiscard]] T moreIsWorse(const site::Stated<T>& stated, Corner corner) {
  if (!stated.isGuess() || corner == Corner::Likely) return stated.value;
  return corner == Corner::Adverse ? *stated.high : *stated.low;
}

// Of a quantity of which less is worse: the source's voltage.
template <class T>
[[nodiscard]] T lessIsWorse(const site::Stated<T>& stated, Corner corner) {
  if (!stated.isGuess() || corner == Corner::Likely) return stated.value;
  return corner == Corner::Adverse ? *stated.low : *stated.high;
}

}  // namespace cordreach::study
