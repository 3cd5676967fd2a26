// SPDX-License-Identifier: GPL-3.0-or-later
// Constant impedance.
#include "physics/load_impedance.h"

#include "base/contract.h"

namespace cordreach::physics {
namespace {

class ImpedanceLaw final : public LoadLaw {
 public:
  explicit ImpedanceLaw(std::complex<double> admittanceS) { m_point.admittanceS = admittanceS; }
  [[nodiscard]] LoadPoint at(double /*voltageV*/) const override { return m_point; }
  [[nodiscard]] const LoadPoint* always() const override { return &m_point; }

 private:
  LoadPoint m_point;
};

}  // namespace

std::shared_ptr<const LoadLaw> makeImpedanceLaw(std::complex<double> impedanceOhm) {
  CORDREACH_EXPECTS(std::abs(impedanceOhm) > 0.0 && impedanceOhm.real() >= 0.0);
  return std::make_shared<ImpedanceLaw>(1.0 / impedanceOhm);
}

std::shared_ptr<const LoadLaw> makeHeaterLaw(units::Voltage voltage, units::Current current) {
  CORDREACH_EXPECTS(voltage.si() > 0.0 && current.si() > 0.0);
  return makeImpedanceLaw(voltage.si() / current.si());
}

}  // namespace cordreach::physics
