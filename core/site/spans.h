// SPDX-License-Identifier: GPL-3.0-or-later
// Stretches of time as sorted spans that lie apart. For checks and queries of when things are plugged in.
#pragma once

#include <optional>
#include <vector>

#include "site/hours.h"

namespace cordreach::site {

using Spans = std::vector<Hours>;

// Of what is always there.
inline constexpr Hours kAlways{units::Duration::fromSi(-1e9), units::Duration::fromSi(1e9)};

[[nodiscard]] inline Hours hoursOrAlways(const std::optional<Hours>& hours) { return hours ? *hours : kAlways; }

// Sorted, with those that overlap or touch made one.
[[nodiscard]] Spans merged(Spans spans);

}  // namespace cordreach::site
