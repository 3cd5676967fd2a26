// SPDX-License-Identifier: GPL-3.0-or-later
// An induction machine switched on. Below the start switch's speed its start winding helps:
//   I = V/(R1s + R2s/s + jXs), R1s + R2s + jXs = V/I_locked at power factor 0.7, R2s from the locked-rotor torque,
// above it the circuit fitted to its plate alone. Air-gap power Pag = I2² R2/s is torque times synchronous speed, so
// torque goes as V² at any speed (handbook table, seen), V being what its own current leaves at the terminals.
// Locked-rotor amps: stated, by code letter, or the class's multiple of the plate. Locked-rotor torque: of full load's,
// capacitor-start 2.5 to 4, split-phase 1.25 to 2, permanent capacitor 0.3 to 1 (memory). Switch at 75 % (memory).
// A balance of torques below the circuit's pull-out is no running: the machine hangs there, or stands.
#pragma once

#include "physics/load_induction.h"
#include "physics/start_run.h"
#include "physics/thevenin.h"

namespace cordreach::physics {

inline constexpr double kStartSwitchShare = 0.75;  // of synchronous speed; memory: 70 to 80 %

struct InductionStart {
  InductionLoad load;           // its full-load rpm must be known; torqueFactor: drag while it starts
  double inertiaKgM2 = 0;       // at the speed of `load.fullLoadRpm`
  double lockedRotorA = 0;      // at plate volts, over 0
  double lockedRotorRatio = 0;  // locked-rotor torque over the plate's shaft torque, over 0
};

// The two windings together: R1 + R2/s + jX.
struct StartWinding {
  double r1Ohm = 0, r2Ohm = 0, xOhm = 0;
};
// A torque beyond what those amps can give is cut to where nine tenths of the resistance are the rotor's.
[[nodiscard]] StartWinding startWindingOf(const InductionStart& start);

[[nodiscard]] StartRun startInduction(const InductionStart& start, const Thevenin& supply, int pieces = 32);

}  // namespace cordreach::physics
