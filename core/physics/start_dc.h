// SPDX-License-Identifier: GPL-3.0-or-later
// A permanent-magnet dc machine switched on: V = K w + I R, K I = J dw/dt + T. In closed form
//   w(t) = w_end (1 - e^(-t/tau)),  tau = J R/K²,  first current V/R,  95 % of its speed after ln 20 tau = 3.0 tau,
// R all that is in the loop: resistance in front lowers the peak and lengthens the start. The armature's inductance is
// left out: its milliseconds against tau of half a second shave a few per cent off the very first peak.
// Source: dc machine textbooks (seen).
// Behind a bridge the mean dc loop has V = (2√2/π) V_rms - 4 V and R = Ra + R_line, as a bridge's mean is that of its
// rectified line (closed form) while the current does not pause. A smooth armature (10 mH) does so and comes up 3 to 10
// % sooner than that, with a quarter less I²t (ngspice); with little inductance, or no load, the machine draws on the
// line's peak and is faster still. Reactance in the line is left out (own: under 2 %).
#pragma once

#include "physics/load_rectified.h"
#include "physics/motor_dc.h"
#include "physics/start_run.h"
#include "physics/thevenin.h"

namespace cordreach::physics {

struct DcStart {
  DcMotor motor;
  double inertiaKgM2 = 0;
  units::Torque load;  // the machine's own friction with it
};
[[nodiscard]] units::Duration startTimeConstant(const DcStart& start, units::Resistance inFront);
// On a dc supply; the samples' current and volts are the armature's.
[[nodiscard]] StartRun startDc(const DcStart& start, units::Voltage open, units::Resistance inFront, int pieces = 32);

struct RectifiedStart {
  RectifiedMotor motor;  // its speed must be known; torqueFactor: drag while it starts
  double inertiaKgM2 = 0;
};
// K, Ra and the torque that a plate stands for.
[[nodiscard]] DcStart dcBehindBridge(const RectifiedStart& start);

// On the line: total rms 1.11 times dc. The current is a sine at standstill and has the harmonics of
// load_distortion.csv at speed, in a straight line between (own); its fundamental is in phase with the terminals'
// volts.
[[nodiscard]] StartRun startRectified(const RectifiedStart& start, const Thevenin& supply, int pieces = 32);

}  // namespace cordreach::physics
