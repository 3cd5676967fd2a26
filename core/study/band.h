// SPDX-License-Identifier: GPL-3.0-or-later
// A modelled number with the range it may lie in, because some of what it was made of is uncertain.
#pragma once

namespace cordreach::study {

template <class T>
struct Band {
  T likely;
  T low;
  T high;

  friend bool operator==(const Band&, const Band&) = default;
};

}  // namespace cordreach::study
