// SPDX-License-Identifier: GPL-3.0-or-later
// Start capacitor.
#include "physics/motor_capacitor.h"

#include <numbers>

#include "base/contract.h"

namespace cordreach::physics {

double quadratureCapacitanceF(std::complex<double> mainOhm, std::complex<double> auxiliaryOhm,
                              units::Frequency frequency) {
  CORDREACH_EXPECTS(mainOhm.imag() > 0.0 && frequency.si() > 0.0);
  const double capacitorOhm = auxiliaryOhm.imag() + auxiliaryOhm.real() * mainOhm.real() / mainOhm.imag();
  return 1.0 / (2.0 * std::numbers::pi * frequency.si() * capacitorOhm);
}

}  // namespace cordreach::physics
