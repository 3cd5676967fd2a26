// SPDX-License-Identifier: GPL-3.0-or-later
// Induction motor as a load law over either slip law.
#include "physics/load_induction.h"

#include <algorithm>
#include <cmath>

#include "base/contract.h"
#include "physics/motor_slip.h"

namespace cordreach::physics {
namespace {

constexpr double kFanTopOfPlate = 3.0;

template <class Slip>
class InductionLaw final : public LoadLaw {
 public:
  InductionLaw(const InductionLoad& load, Slip slip)
      : m_slip(std::move(slip)),
        m_admittance(admittanceOfRotor(load.fit.circuit)),
        m_distortion(load.distortion),
        m_pullOutS(m_admittance.at(m_slip.pullOutRotorOhm())),
        m_lockedS(m_admittance.at(load.fit.circuit.r2Ohm)),
        m_r2Ohm(load.fit.circuit.r2Ohm) {
    if (load.fullLoadRpm) m_synchronousRpm = *load.fullLoadRpm / (1.0 - load.fullLoadSlip);
    if (load.lockedRotorA) {
      const double reactive = std::sqrt(1.0 - kLockedRotorPowerFactor * kLockedRotorPowerFactor);
      m_lockedS = std::complex<double>(kLockedRotorPowerFactor, -reactive) * (*load.lockedRotorA / load.plateV);
    }
  }

  [[nodiscard]] LoadPoint at(double voltageV) const override {
    if (voltageV <= m_slip.pullOutV()) return standing(m_pullOutS, voltageV);
    const RotorPoint rotor = m_slip.at(voltageV);
    LoadPoint point;
    point.admittanceS = m_admittance.at(rotor.rotorOhm);
    point.admittanceSlopeSPerV = m_admittance.slopeAt(rotor.rotorOhm) * rotor.slopeOhmPerV;
    setDistortion(point, voltageV);
    if (m_synchronousRpm) point.speedRpm = *m_synchronousRpm * (1.0 - m_r2Ohm / rotor.rotorOhm);
    return point;
  }

  [[nodiscard]] LoadPoint stalledAt(double voltageV) const override { return standing(m_lockedS, voltageV); }
  [[nodiscard]] double pullOutVoltageV() const override { return m_slip.pullOutV(); }

 private:
  [[nodiscard]] LoadPoint standing(std::complex<double> admittanceS, double voltageV) const {
    LoadPoint point;
    point.admittanceS = admittanceS;
    point.hasRunningPoint = false;
    setDistortion(point, voltageV);
    if (m_synchronousRpm) point.speedRpm = 0.0;
    return point;
  }

  void setDistortion(LoadPoint& point, double voltageV) const {
    if (m_distortion.total == 0.0) return;
    const double fundamentalA = std::abs(point.admittanceS) * voltageV;
    point.distortionA = m_distortion.total * fundamentalA;
    point.thirdHarmonicA = m_distortion.third * fundamentalA;
    point.thirdHarmonicPhaseRad = m_distortion.thirdPhaseRad;
  }

  Slip m_slip;
  AdmittanceOfRotor m_admittance;
  Distortion m_distortion;
  std::complex<double> m_pullOutS;
  std::complex<double> m_lockedS;
  double m_r2Ohm;
  std::optional<double> m_synchronousRpm;
};

}  // namespace

std::shared_ptr<const LoadLaw> makeInductionLaw(const InductionLoad& load) {
  CORDREACH_EXPECTS(load.plateV > 0.0 && load.torqueFactor >= 0.0);
  const double shaftW = load.fit.loadAirGapW * load.torqueFactor;
  if (load.shaft == ShaftLoad::ConstantTorque) {
    const ConstantTorqueSlip slip(load.fit.circuit, shaftW + load.fit.lossAirGapW);
    return std::make_shared<InductionLaw<ConstantTorqueSlip>>(load, slip);
  }
  const FanTorque torque{shaftW, load.fit.lossAirGapW, load.fullLoadSlip};
  const double topV = kFanTopOfPlate * load.plateV * std::max(1.0, std::sqrt(load.torqueFactor));
  return std::make_shared<InductionLaw<FanSlip>>(load, FanSlip(load.fit.circuit, torque, topV));
}

}  // namespace cordreach::physics
