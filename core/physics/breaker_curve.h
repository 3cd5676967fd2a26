// SPDX-License-Identifier: GPL-3.0-or-later
// The three curves between which a breaker may trip, as a thermal replica and an instantaneous part.
//   d(theta)/dt = (I^2/I_th^2 - theta)/tau, trip at theta = 1                        IEC 60255-149 (older: 60255-8)
//   I_th(T) = I_th(T0) sqrt((T_t - T)/(T_t - T0)), T the air at the breaker, T_t the bimetal's trip temperature
// Latest by UL 489: 135 % within 1 h and 200 % within 2 min (to 30 A), 4 min (to 50 A), 6 min above:
//   tau = t_200/ln(4/(4 - 1.35^2)), I_th(25 C) = 1.35 sqrt(1 - e^(-t_135/tau)) I_n;  T_t 90 C below 25 C, 130 C above
// Earliest: I_th(40 C) = 1.02 I_n, tau 36 s;  T_t 130 C below 40 C, 90 C above. The standard sets no shortest time.
// Likely: I_th(25 C) = 1.18 I_n, tau 100 s;  T_t 110 C. Our choice between the two.
// IEC 60898-1 B, C, D, all at 30 C, laws turning there: earliest 1.13 I_n, 4.6 s; likely 1.28 I_n, 27 s (ours); latest
// from 1.45 I_n within 1 h and 2.55 I_n within 60 s (to 32 A) or 120 s.
// Range: to about six times the rating; one time constant leaves out the case's slow warming.
#pragma once

#include <array>
#include <optional>

#include "physics/breaker_spec.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::physics {

enum class TripCurve { Earliest, Likely, Latest };
inline constexpr std::array kTripCurves = {TripCurve::Earliest, TripCurve::Likely, TripCurve::Latest};

struct ThermalCurve {
  units::Current ultimate;  // held for ever, just
  units::Duration timeConstant;
};

[[nodiscard]] ThermalCurve thermalCurve(const Breaker& breaker, TripCurve curve, units::Temperature air);

// A current at or above the pick-up trips after the time: half a cycle, one cycle, 0.1 s.
struct InstantaneousTrip {
  units::Current pickUp;  // rms; of a start, its peak over sqrt(2)
  units::Duration time;
};

// None: a fuse.
[[nodiscard]] std::optional<InstantaneousTrip> instantaneousTrip(const Breaker& breaker, TripCurve curve);

// 25 °C, the calibration air of UL 489.
[[nodiscard]] units::Temperature defaultBreakerAir();

}  // namespace cordreach::physics
