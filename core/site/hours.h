// SPDX-License-Identifier: GPL-3.0-or-later
// A span of the planned day, half-open: it holds `from` and not `until`.
#pragma once

#include "units/quantity.h"

namespace cordreach::site {

struct Hours {
  units::Duration from;   // since midnight of the planned day
  units::Duration until;  // later than `from`; past 24 h when the shift runs over midnight

  [[nodiscard]] constexpr bool holds(units::Duration time) const { return from <= time && time < until; }
  [[nodiscard]] constexpr bool overlaps(const Hours& other) const { return from < other.until && other.from < until; }
  [[nodiscard]] constexpr units::Duration length() const { return until - from; }
  friend bool operator==(const Hours&, const Hours&) = default;
};

}  // namespace cordreach::site
