// SPDX-License-Identifier: GPL-3.0-or-later
// What is printed on a breaker or fuse: its rating and, by IEC 60898-1, the letter of its instantaneous band.
#pragma once

#include <string_view>

#include "base/result.h"
#include "units/quantity.h"

namespace cordreach::physics {

enum class BreakerKind {
  ThermalMagnetic,  // UL 489
  IecB,             // IEC 60898-1, instantaneous at 3 to 5 times its rating
  IecC,             // 5 to 10 times
  IecD,             // 10 to 20 times
  Fuse,             // plug or cartridge: the overload points of UL 489 are those of UL 248 too; no instantaneous part
};

struct Breaker {
  units::Current rating;
  BreakerKind kind = BreakerKind::ThermalMagnetic;

  friend bool operator==(const Breaker&, const Breaker&) = default;
};

// The ratings the calibration tables reach.
inline constexpr units::Current kSmallestBreaker = 1.0 * units::ampere;
inline constexpr units::Current kLargestBreaker = 125.0 * units::ampere;

// `20A`, `20`, `B16`, `C 20`, `16A B`, `15A fuse`, in either case.
// Errors: breaker.unreadable; breaker.out_of_range {smallest_a, largest_a}. The place is the text.
[[nodiscard]] base::Result<Breaker> parseBreaker(std::string_view text);

}  // namespace cordreach::physics
