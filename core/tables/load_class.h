// SPDX-License-Identifier: GPL-3.0-or-later
// What a load is inside: low voltage does different things to each class.
#pragma once

namespace cordreach::tables {

enum class LoadClass {
  Induction,        // shaft power nearly fixed: amps rise as volts fall, then it stalls
  RectifiedDc,      // amps set by drag, speed by volts
  Universal,        // near constant impedance
  Resistance,       // heater, brewer
  Electronic,       // constant power, harmonics
  Compressor,       // refrigerating machine: induction, hard to start
  PhaseControlled,  // copier and the like: heat in bursts behind electronics
};

}  // namespace cordreach::tables
