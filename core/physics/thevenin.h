// SPDX-License-Identifier: GPL-3.0-or-later
// All that stands in front of a machine, as one source behind one impedance (Thévenin, 1883; exact for a linear
// network). From a network: the volts at the terminals without the machine, and the change of these by its amps.
#pragma once

#include <complex>

namespace cordreach::physics {

struct Thevenin {
  double openV = 0;            // rms at the terminals while nothing flows; its phase is 0
  std::complex<double> ohm{};  // there and back
};

}  // namespace cordreach::physics
