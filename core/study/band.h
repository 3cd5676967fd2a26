// SPDX-License-Identifier: GPL-3.0-or-later
// A modelled number with the range it may lie in, because some of what it was made of is uncertain.
#pragma once

#include <algorithm>

namespace cordreach::study {

template <class T>
struct Band {
  T likely;
  T low;
  T high;

  friend bool operator==(const Band&, const Band&) = default;
};

// The likely value with the lowest and the highest of all three.
template <class T>
[[nodiscard]] Band<T> bandOf(T likely, T adverse, T favourable) {
  return {likely, std::min({likely, adverse, favourable}), std::max({likely, adverse, favourable})};
}

}  // namespace cordreach::study
