// SPDX-License-Identifier: GPL-3.0-or-later
// Load laws of the simplest kinds for tests of the network alone: their figures are made up, their shapes are those of
// real loads (also the awkward ones: a steep motor law with a pull-out, a constant power with a kink).
#pragma once

#include <algorithm>
#include <cmath>
#include <complex>
#include <memory>
#include <utility>

#include "physics/load_impedance.h"
#include "physics/load_law.h"

namespace cordreach::testing {

using Law = std::shared_ptr<const physics::LoadLaw>;

// |I| ~ V^exponent above `lowestV`, the impedance it has there below: 0 is a constant current, -1 a constant power.
class ExponentLaw : public physics::LoadLaw {
 public:
  ExponentLaw(std::complex<double> nominalA, double nominalV, double exponent, double lowestV)
      : m_nominalS(nominalA / nominalV), m_nominalV(nominalV), m_power(exponent - 1.0), m_lowestV(lowestV) {}

  [[nodiscard]] physics::LoadPoint at(double voltageV) const override {
    physics::LoadPoint point;
    const double v = std::max(voltageV, m_lowestV);
    point.admittanceS = m_nominalS * std::pow(v / m_nominalV, m_power);
    if (voltageV > m_lowestV) point.admittanceSlopeSPerV = point.admittanceS * m_power / v;
    return point;
  }

 private:
  std::complex<double> m_nominalS;
  double m_nominalV;
  double m_power;
  double m_lowestV;
};

// A motor at constant torque: slip ~ 1 - sqrt(1 - (pullOut/V)²), current from idling to pull-out in step with it.
class PullOutLaw : public physics::LoadLaw {
 public:
  struct Figures {
    double nominalA = 12;
    double nominalV = 115;
    double pullOutV = 80;
    double powerFactor = 0.75;
    double lockedA = 70;  // at nominal volts
  };

  explicit PullOutLaw(const Figures& figures) : m_figures(figures) {
    const std::complex<double> direction{figures.powerFactor, -std::sqrt(1 - std::pow(figures.powerFactor, 2))};
    const double nominalSlip = slip(figures.nominalV);
    m_idleS = 0.5 * figures.nominalA / figures.nominalV * direction;
    m_perSlipS = 0.5 * figures.nominalA / figures.nominalV / nominalSlip * direction;
    m_lockedS = figures.lockedA / figures.nominalV * std::complex<double>{0.6, -0.8};
  }

  [[nodiscard]] physics::LoadPoint at(double voltageV) const override {
    physics::LoadPoint point;
    point.hasRunningPoint = voltageV >= m_figures.pullOutV;
    const double v = std::max(voltageV, m_figures.pullOutV);
    point.admittanceS = m_idleS + m_perSlipS * slip(v);
    if (!point.hasRunningPoint) return point;
    const double ratio = m_figures.pullOutV / v;
    const double root = std::max(std::sqrt(1.0 - ratio * ratio), 1e-9);
    point.admittanceSlopeSPerV = -m_perSlipS * ratio * ratio / (v * root);
    return point;
  }

  [[nodiscard]] physics::LoadPoint stalledAt(double) const override {
    physics::LoadPoint point;
    point.admittanceS = m_lockedS;
    point.hasRunningPoint = false;
    return point;
  }

  [[nodiscard]] double pullOutVoltageV() const override { return m_figures.pullOutV; }

 private:
  [[nodiscard]] double slip(double voltageV) const {
    return 1.0 - std::sqrt(std::max(0.0, 1.0 - std::pow(m_figures.pullOutV / voltageV, 2)));
  }

  Figures m_figures;
  std::complex<double> m_idleS;
  std::complex<double> m_perSlipS;
  std::complex<double> m_lockedS;
};

// A constant impedance with harmonics beside it.
class DistortedLaw : public physics::LoadLaw {
 public:
  struct Figures {
    double admittanceS = 0.1;
    double distortionA = 0;
    double thirdA = 0;
    double thirdPhaseRad = 0;
  };

  explicit DistortedLaw(const Figures& figures) : m_figures(figures) {}

  [[nodiscard]] physics::LoadPoint at(double) const override {
    physics::LoadPoint point;
    point.admittanceS = m_figures.admittanceS;
    point.distortionA = m_figures.distortionA;
    point.thirdHarmonicA = m_figures.thirdA;
    point.thirdHarmonicPhaseRad = m_figures.thirdPhaseRad;
    return point;
  }

 private:
  Figures m_figures;
};

inline Law impedanceOhm(std::complex<double> ohm) { return physics::makeImpedanceLaw(ohm); }

// A current of this size at this power factor (lagging), whatever the voltage down to 1 V.
inline Law fixedCurrent(double currentA, double powerFactor = 1.0) {
  const std::complex<double> direction{powerFactor, -std::sqrt(1.0 - powerFactor * powerFactor)};
  return std::make_shared<ExponentLaw>(currentA * direction, 1.0, 0.0, 1.0);
}

inline Law constantPower(double powerW, double nominalV, double lowestV) {
  return std::make_shared<ExponentLaw>(powerW / nominalV, nominalV, -1.0, lowestV);
}

inline Law motor(const PullOutLaw::Figures& figures) { return std::make_shared<PullOutLaw>(figures); }

}  // namespace cordreach::testing
