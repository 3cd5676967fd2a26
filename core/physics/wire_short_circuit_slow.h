// SPDX-License-Identifier: GPL-3.0-or-later
// A short circuit that lasts long enough for the insulation to take up heat too:
//   I = I_ad sqrt(1 + X sqrt(t/S) + Y t/S)                                                  IEC 60949, from memory
// so that a conductor stands t = (k S/I)^2 (1 + X sqrt(t/S) + Y t/S). Against a two-dimensional solution of 1.31 mm² in
// PVC it is the safe side (1.30, 1.80, 2.26 against 1.57, 2.4, 3.1 at 1, 5, 10 s). Also the equation of ICEA P-32-382,
//   (I/A)^2 t = 0.0297 log10((T2 + 234)/(T1 + 234)), A in circular mil.
// Range: copper, to about 60 s.
#pragma once

#include "tables/conductor_metal.h"
#include "units/quantity.h"
#include "units/temperature.h"
#include "units/wire_size.h"

namespace cordreach::physics {

enum class ConductorCover { Pvc, Xlpe, Epr };

// The square of the factor by which more current is stood than if all heat stayed: 1 at 0 s.
[[nodiscard]] double slowFactor(const units::WireSize& size, ConductorCover cover, units::Duration time);

// How long copper of that size stands that current.
[[nodiscard]] units::Duration slowTime(const units::WireSize& size, ConductorCover cover, units::Current fault,
                                       units::Temperature first, units::Temperature last);

// The current that heats copper from `first` to `last` in that time by ICEA's equation.
[[nodiscard]] units::Current iceaCurrent(const units::WireSize& size, units::Duration time, units::Temperature first,
                                         units::Temperature last);

}  // namespace cordreach::physics
