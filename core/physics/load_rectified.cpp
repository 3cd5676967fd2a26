// SPDX-License-Identifier: GPL-3.0-or-later
// Rectifier-fed dc motor: constant current down to standstill.
#include "physics/load_rectified.h"

#include <algorithm>
#include <cmath>

#include "base/contract.h"
#include "physics/load_model.h"

namespace cordreach::physics {
namespace {

double bridgeV(double voltageV) { return std::max(0.0, kBridgeMeanOfRms * voltageV - kBridgeDropV); }

class RectifiedLaw final : public LoadLaw {
 public:
  explicit RectifiedLaw(const RectifiedMotor& motor) : m_distortion(modelDistortion(LoadModel::RectifiedDc)) {
    const double plateV = motor.voltage.si();
    const double usualDcA = motor.current.si() / kLineRmsPerDcAmp;
    m_armatureOhm = kArmatureDropShare * bridgeV(plateV) / usualDcA;
    m_totalA = motor.current.si() * (kLossTorqueShare + (1.0 - kLossTorqueShare) * motor.torqueFactor);
    m_standstillV = (m_totalA / kLineRmsPerDcAmp * m_armatureOhm + kBridgeDropV) / kBridgeMeanOfRms;
    if (motor.speedRpm) m_rpmPerBackV = *motor.speedRpm / (bridgeV(plateV) - usualDcA * m_armatureOhm);
    m_fundamentalShare = m_distortion.fundamentalShare();
  }

  [[nodiscard]] LoadPoint at(double voltageV) const override {
    const bool turns = voltageV > m_standstillV;
    const double totalA = turns ? m_totalA : m_totalA * voltageV / m_standstillV;
    LoadPoint point = harmonicsOf(totalA);
    point.admittanceS = m_totalA * m_fundamentalShare / std::max(voltageV, m_standstillV);
    point.admittanceSlopeSPerV = turns ? -point.admittanceS / voltageV : 0.0;
    point.hasRunningPoint = turns;
    if (m_rpmPerBackV) {
      const double backV = bridgeV(voltageV) - m_totalA / kLineRmsPerDcAmp * m_armatureOhm;
      point.speedRpm = turns ? backV * *m_rpmPerBackV : 0.0;
    }
    return point;
  }

  // Standing, only the armature's resistance limits the current.
  [[nodiscard]] LoadPoint stalledAt(double voltageV) const override {
    const double totalA = kLineRmsPerDcAmp * bridgeV(voltageV) / m_armatureOhm;
    LoadPoint point = harmonicsOf(totalA);
    if (totalA > 0.0) {
      const double dropA = kLineRmsPerDcAmp * kBridgeDropV / m_armatureOhm;
      point.admittanceS = totalA * m_fundamentalShare / voltageV;
      point.admittanceSlopeSPerV = dropA * m_fundamentalShare / (voltageV * voltageV);
    }
    point.hasRunningPoint = false;
    if (m_rpmPerBackV) point.speedRpm = 0.0;
    return point;
  }

  [[nodiscard]] double pullOutVoltageV() const override { return m_standstillV; }

 private:
  [[nodiscard]] LoadPoint harmonicsOf(double totalA) const {
    LoadPoint point;
    const double fundamentalA = totalA * m_fundamentalShare;
    point.distortionA = m_distortion.total * fundamentalA;
    point.thirdHarmonicA = m_distortion.third * fundamentalA;
    point.thirdHarmonicPhaseRad = m_distortion.thirdPhaseRad;
    return point;
  }

  Distortion m_distortion;
  double m_armatureOhm = 0;
  double m_totalA = 0;
  double m_standstillV = 0;
  double m_fundamentalShare = 1;
  std::optional<double> m_rpmPerBackV;
};

}  // namespace

std::shared_ptr<const LoadLaw> makeRectifiedLaw(const RectifiedMotor& motor) {
  CORDREACH_EXPECTS(bridgeV(motor.voltage.si()) > 0.0 && motor.current.si() > 0.0 && motor.torqueFactor >= 0.0);
  return std::make_shared<RectifiedLaw>(motor);
}

}  // namespace cordreach::physics
