// SPDX-License-Identifier: GPL-3.0-or-later
// A machine coming up to speed, by its one slow state, the speed w:  J dw/dt = T_motor(w) - T_load(w).
// The currents follow within milliseconds (their inductance over resistance), so they are those of the speed; the time
// is then an integral over speed, t = ∫ J dw/(T_motor - T_load), by three-point Gauss-Legendre pieces that get finer
// towards the end. Valid while the electrical time constant is far below the run-up time (5 ms against 0.2 s).
// Sources: rotational mechanics; the form of t = WK² dN/(308 T) of the handbooks (seen).
#pragma once

#include <complex>
#include <functional>
#include <optional>
#include <vector>

#include "units/quantity.h"

namespace cordreach::physics {

struct StartSample {
  double timeS = 0;
  std::complex<double> currentA{};  // fundamental; its phase is against the open-circuit volts
  double totalRmsA = 0;             // with harmonics: what heats and trips
  double voltageV = 0;              // at the machine's terminals
  double speedShare = 0;            // of the speed it comes to, or would
};

// What went in at the motor's terminals (of a rectified one: behind the bridge) until the last sample, and where to.
struct StartEnergy {
  double inputJ = 0, lossJ = 0, kineticJ = 0, loadJ = 0;  // load: drag and the machine's own friction
};

struct StartRun {
  std::vector<StartSample> samples;       // in order of time, the first at 0; never completes: up to where it hangs
  std::optional<units::Duration> time95;  // to 95 % of the speed it comes to; none: never completes
  units::Current peak;                    // largest total rms
  units::Current settled;                 // total rms at the end; never completes: what goes on flowing
  units::Voltage lowest;                  // volts at the terminals while the peak flows
  double i2tA2S = 0;                      // of the total rms, until time95 (or the last sample)
  std::optional<double> endRpm{};         // the speed it comes to, where it is known
  StartEnergy energy{};

  [[nodiscard]] bool completes() const { return time95.has_value(); }
};

struct RunUpPoint {
  std::complex<double> currentA{};
  double totalRmsA = 0, voltageV = 0;
  double motorNm = 0, loadNm = 0;
  double inputW = 0, lossW = 0;  // loss: electrical; input = loss + motorNm w
};

struct RunUp {
  double inertiaKgM2 = 0;                // over 0
  std::function<RunUpPoint(double)> at;  // at a speed in radians per second
  double topRadPerS = 0;                 // no balance of torques lies above
  double runsFromRadPerS = 0;            // a balance below this is no running but a hanging
  std::optional<double> breakRadPerS{};  // where torque jumps: a start winding's switch
  int pieces = 32;                       // a third of the intervals
};
[[nodiscard]] StartRun integrate(const RunUp& runUp);

}  // namespace cordreach::physics
