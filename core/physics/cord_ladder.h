// SPDX-License-Identifier: GPL-3.0-or-later
// One metre of cord, or of a hank of cords, as three thermal nodes in a row: 0 the copper with the insulation on it,
// 1 the middle, 2 the body, with the surface hanging algebraically on node 2.
//   C0 dT0/dt = s Q(T0) - (T0-T1)/R01;   C1 dT1/dt = (T0-T1)/R01 - (T1-T2)/R12
//   C2 dT2/dt = (1-s) Q(T0) + (T1-T2)/R12 - (T2-Ts)/R2s;   (T2-Ts)/R2s = loss(Ts)
//   Q(T0) = I^2 R20 (1 + alpha (T0 - 20 C)), s the share of the heat that arises in node 0.
// Range: conductor up to 300 C, seconds to hours; against a two-dimensional solution within 4 to 11 % from 0.3 to 30 s
// and 5 % of the final rise later.
#pragma once

#include <array>
#include <optional>

#include "physics/cord_surface.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::physics {

struct CordLadder {
  std::array<double, 3> capacityJPerMK{};
  double resistance01 = 0.0;  // K m/W
  double resistance12 = 0.0;
  double resistance2s = 0.0;
  double sourceShare = 1.0;  // s
  double ohmPerM20 = 0.0;    // all carrying conductors of all turns together, at 20 °C
  double alphaPerK = 0.0;    // referred to 20 °C
  CordSurface surface;
};

// Conductor and surface at the hottest place.
struct HeatResult {
  units::Temperature conductor;
  units::Temperature surface;

  friend bool operator==(const HeatResult&, const HeatResult&) = default;
};

// The conductor temperature beyond which the insulation no longer exists and no model holds.
[[nodiscard]] units::Temperature beyondModelTemperature();

// After any length of time at that rms current; none: runaway, or hotter than the model reaches.
[[nodiscard]] std::optional<HeatResult> steadyOf(const CordLadder& ladder, units::Current rms, units::Temperature air);

// The ladder in time, by the L-stable second-order Rosenbrock method with error control.
class LadderRun {
 public:
  LadderRun(const CordLadder& ladder, units::Temperature air);

  // Carries that current for that long. A conductor beyond the model stays there.
  void advance(units::Current rms, units::Duration duration);
  // As advance, but stops when the conductor first reaches `limit`; answers after how long, or none if it does not.
  [[nodiscard]] std::optional<units::Duration> advanceUntil(units::Current rms, units::Duration duration,
                                                            units::Temperature limit);
  // The same temperatures in another surrounding: covered, uncovered, or other air.
  void changeSurroundings(const CordLadder& ladder, units::Temperature air);

  [[nodiscard]] HeatResult now() const;
  [[nodiscard]] bool beyondModel() const { return m_beyond; }
  [[nodiscard]] units::Temperature air() const { return m_air; }
  // Smaller than 1: finer steps, for checking convergence.
  void setToleranceK(double toleranceK) { m_toleranceK = toleranceK; }
  [[nodiscard]] std::size_t steps() const { return m_steps; }

 private:
  std::optional<units::Duration> run(double source20WPerM, double durationS, double limitC);

  CordLadder m_ladder;
  units::Temperature m_air;
  std::array<double, 3> m_nodesC{};
  double m_stepS = 1.0;
  double m_toleranceK = 0.02;
  std::size_t m_steps = 0;
  bool m_beyond = false;
};

}  // namespace cordreach::physics
