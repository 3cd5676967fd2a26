// SPDX-License-Identifier: GPL-3.0-or-later
// How long a conductor stands a short circuit if it keeps all the heat: t = (k S / I)^2,
//   k = sqrt( Q_c (B + 20) / rho20 ln((B + T_f)/(B + T_i)) )                     IEC 60364-4-43 and 60364-5-54
// Q_c heat capacity by volume, -B the inferred temperature of zero resistance. Range: up to 5 s; beyond a second the
// insulation takes up heat too, which makes it cautious.
#pragma once

#include "tables/conductor_metal.h"
#include "units/quantity.h"
#include "units/temperature.h"
#include "units/wire_size.h"

namespace cordreach::physics {

// k in A s^0.5 / mm², the unit in which it is published; `last` is above `first`.
[[nodiscard]] double adiabaticFactor(tables::Metal metal, units::Temperature first, units::Temperature last);

[[nodiscard]] units::Duration adiabaticTime(const units::WireSize& size, tables::Metal metal, units::Current fault,
                                            units::Temperature first, units::Temperature last);

}  // namespace cordreach::physics
