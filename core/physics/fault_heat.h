// SPDX-License-Identifier: GPL-3.0-or-later
// A cord while a fault's current flows through it: the cord ladder's three nodes, with the current falling as the
// copper's resistance grows.
//   I(T0) = U / |Z_rest + R_cord,20 (1 + alpha (T0 - 20 C)) + j X_cord|;   C0 dT0/dt = I^2 R - (T0 - T1)/R01, ...
// The surface gives off what it gives off at the start, with the slope that it has there: the ladder's own method is
// for hours, this one for the seconds of a fault, at a hundredth of its cost. A coil or reel is taken as one cord whose
// insulation is as hot as its copper.
// Range: to 300 C of the conductor and to ten minutes; what is slower is an overload. Against the ladder's own method
// within 1 K of 160 C.
#pragma once

#include <complex>
#include <optional>
#include <vector>

#include "physics/cord_ladder.h"
#include "physics/cord_section.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::physics {

// What drives the current: the loop with the cord's part of it taken out and kept apart, because it warms.
struct FaultDrive {
  units::Voltage voltage;          // between line and earth, its factor included
  std::complex<double> restOhm;    // of the loop without the cord
  std::complex<double> cordOhm20;  // of the cord's two conductors at 20 °C
  double alphaPerK = 0.0;          // referred to 20 °C

  [[nodiscard]] units::Current current(units::Temperature conductor) const;
};

// A cord in a fault's terms: laid out whatever its laying, as warm as it was. The conductor's and surface's
// temperatures before the fault spread over the nodes as they do at rest.
class FaultCord {
 public:
  FaultCord(CordSection section, Corner corner, const HeatResult& before, units::Temperature air);

  [[nodiscard]] const CordLadder& ladder() const { return m_ladder; }
  [[nodiscard]] const std::array<double, 3>& nodesC() const { return m_nodesC; }
  [[nodiscard]] units::Temperature air() const { return m_air; }
  [[nodiscard]] double lossWPerM() const { return m_lossWPerM; }

 private:
  CordLadder m_ladder;
  std::array<double, 3> m_nodesC{};
  units::Temperature m_air;
  double m_lossWPerM;
};

// The heating as a polyline from the fault's beginning until the conductor leaves the model, or until `horizon`.
struct FaultPoint {
  units::Duration time;
  units::Temperature conductor;
  units::Current current;
};
using FaultHeat = std::vector<FaultPoint>;

[[nodiscard]] FaultHeat faultHeat(const FaultCord& cord, const FaultDrive& drive, units::Duration horizon);
// 600 s.
[[nodiscard]] units::Duration faultHorizon();

// When the conductor passes `limit`; none: not while the polyline lasts.
[[nodiscard]] std::optional<units::Duration> timeToPass(const FaultHeat& heat, units::Temperature limit);
// Held at its last value beyond the polyline's end.
[[nodiscard]] units::Temperature conductorAt(const FaultHeat& heat, units::Duration time);

}  // namespace cordreach::physics
