// SPDX-License-Identifier: GPL-3.0-or-later
// Constant impedance: I = V / Z at any voltage. Exact for a resistance heater (hot resistance taken as constant,
// measured exponents 1.87 to 2.0) and for a locked rotor, whose iron does not saturate further.
#pragma once

#include <complex>
#include <memory>

#include "physics/load_law.h"
#include "units/quantity.h"

namespace cordreach::physics {

// |impedance| must be positive; the resistance not negative.
[[nodiscard]] std::shared_ptr<const LoadLaw> makeImpedanceLaw(std::complex<double> impedanceOhm);

// A heater that draws `current` at `voltage`, both positive; power factor 1.
[[nodiscard]] std::shared_ptr<const LoadLaw> makeHeaterLaw(units::Voltage voltage, units::Current current);

}  // namespace cordreach::physics
