// SPDX-License-Identifier: GPL-3.0-or-later
// When a breaker trips: never one number but the earliest, the likely and the latest curve's.
//   from what it carried long enough, I_p:  t = tau ln[(I^2 - I_p^2)/(I^2 - I_th^2)]           IEC 60255-149
#pragma once

#include <optional>

#include "physics/breaker_curve.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::physics {

// None: never, "this breaker will not act".
struct TripTimes {
  std::optional<units::Duration> earliest;
  std::optional<units::Duration> likely;
  std::optional<units::Duration> latest;

  [[nodiscard]] std::optional<units::Duration> at(TripCurve curve) const;
  friend bool operator==(const TripTimes&, const TripTimes&) = default;
};

// The air at the breaker as each curve takes it.
struct BreakerAir {
  units::Temperature earliest;
  units::Temperature likely;
  units::Temperature latest;

  [[nodiscard]] static BreakerAir all(units::Temperature air);
  // Of a panel in a room: warm neighbours add 10 K to the earliest curve's air, nothing to the others'.
  [[nodiscard]] static BreakerAir panelIn(units::Temperature room);
  [[nodiscard]] units::Temperature at(TripCurve curve) const;
};

// With `amps` flowing after `carrying` has flowed for long. Carrying what trips it by itself answers 0 on that curve.
[[nodiscard]] TripTimes trip(const Breaker& breaker, units::Current amps, units::Current carrying,
                             const BreakerAir& air);
[[nodiscard]] std::optional<units::Duration> tripTime(const Breaker& breaker, TripCurve curve, units::Current amps,
                                                      units::Current carrying, units::Temperature air);

// One curve's replica carried through a duty: theta is 0 cold, 1 at the trip.
class BreakerState {
 public:
  BreakerState(const Breaker& breaker, TripCurve curve, units::Temperature air,
               units::Current carrying = 0.0 * units::ampere);

  // Carries that current for that long; answers when within it the breaker trips. Once tripped it carries nothing and
  // answers none, while theta falls as it cools.
  std::optional<units::Duration> advance(units::Current rms, units::Duration duration);
  // From here at that current; none: never. 0 when it has tripped.
  [[nodiscard]] std::optional<units::Duration> timeToTrip(units::Current rms) const;
  [[nodiscard]] double theta() const { return m_theta; }
  [[nodiscard]] bool tripped() const { return m_tripped; }

 private:
  [[nodiscard]] double target(units::Current rms) const;
  void settle(double target, units::Duration duration);

  ThermalCurve m_curve;
  std::optional<InstantaneousTrip> m_instantaneous;
  double m_theta = 0.0;
  bool m_tripped = false;
};

}  // namespace cordreach::physics
