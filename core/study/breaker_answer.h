// SPDX-License-Identifier: GPL-3.0-or-later
// A circuit's breaker in one moment of the day: what it carried just before, what then flows, when it trips.
#pragma once

#include <optional>

#include "site/site.h"
#include "study/answer.h"
#include "study/circuit_load.h"

namespace cordreach::study {

struct BreakerMoment {
  const CircuitLoad& load;
  units::Current before;  // what the circuit carried in the moment before
  units::Duration run;    // how long this lasts
};

[[nodiscard]] physics::BreakerAir breakerAirOf(const site::Site& site);
// None: nobody knows its rating.
[[nodiscard]] std::optional<physics::Breaker> breakerOf(const site::Circuit& circuit);

// Of a circuit; without a rating its trip is unknown.
[[nodiscard]] BreakerAnswer breakerAnswerOf(const site::Site& site, const site::Circuit& circuit,
                                            const BreakerMoment& moment);

// Of an outlet whose breaker is unknown: the strictest that is common, 15 A.
[[nodiscard]] BreakerAnswer supposedBreakerAnswerOf(const site::Site& site, const BreakerMoment& moment);

// Of a panel's main, whose rating is known.
[[nodiscard]] BreakerAnswer mainAnswerOf(const site::Site& site, const site::Panel& panel, const BreakerMoment& moment);

// Whether it acts within the time for which its current can flow; early: on the earliest curve only.
enum class WithinRun { Holds, TripsEarly, Trips };
[[nodiscard]] WithinRun withinRun(const BreakerAnswer& breaker);

// True when `a` is worse news than `b`: trips sooner on the likely curve, then on the earliest, then carries more.
[[nodiscard]] bool worse(const BreakerAnswer& a, const BreakerAnswer& b);

}  // namespace cordreach::study
