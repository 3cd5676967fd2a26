// SPDX-License-Identifier: GPL-3.0-or-later
// The start capacitor that puts the auxiliary winding's current a quarter period ahead of the main's at standstill:
// Xc = Xa + Ra Rm / Xm, which sets the two branch impedances at right angles. Unsaturated; source: the textbook
// Electric Machinery, example 9.1 (seen).
#pragma once

#include <complex>

#include "units/quantity.h"

namespace cordreach::physics {

// In farads. Both windings need resistance and reactance over 0.
[[nodiscard]] double quadratureCapacitanceF(std::complex<double> mainOhm, std::complex<double> auxiliaryOhm,
                                            units::Frequency frequency);

}  // namespace cordreach::physics
