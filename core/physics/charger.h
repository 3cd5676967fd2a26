// SPDX-License-Identifier: GPL-3.0-or-later
// A battery charger through its charge: its plate's amps for a while (constant current), then less and less (constant
// voltage) down to a twentieth, which it keeps.
//   f(t) = 1 up to t_c;   f = 20^(-(t - t_c)/t_t) up to t_c + t_t;   f = 1/20 after that
// The two stages are common practice, the exponential between them and the twentieth that remains are our own.
// Continuous (NEC Article 100, seen) is what stays at its largest for three hours or more.
#pragma once

#include "units/quantity.h"

namespace cordreach::physics {

struct Charger {
  units::Duration constant;  // 0 or more
  units::Duration taper;     // 0 or more
};

inline constexpr double kChargedShare = 0.05;                      // own
inline constexpr units::Duration kContinuous = 3.0 * units::hour;  // NEC Article 100

// Of its plate's amps, that long after it was switched on.
[[nodiscard]] double chargeShareAt(const Charger& charger, units::Duration since);
// Root mean square of that share between two times: what warms wire. `until` is after `from`.
[[nodiscard]] double chargeRmsShare(const Charger& charger, units::Duration from, units::Duration until);
[[nodiscard]] bool isContinuous(const Charger& charger);

}  // namespace cordreach::physics
