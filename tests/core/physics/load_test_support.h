// SPDX-License-Identifier: GPL-3.0-or-later
// What several load tests ask of a law.
#pragma once

#include <cmath>
#include <memory>

#include "physics/load_law.h"
#include "physics/load_nameplate.h"

namespace cordreach::physics {

inline double totalA(const LoadLaw& law, double voltageV) {
  const LoadPoint point = law.at(voltageV);
  return std::hypot(std::abs(point.admittanceS) * voltageV, point.distortionA);
}

inline double inputW(const LoadLaw& law, double voltageV) {
  return law.at(voltageV).admittanceS.real() * voltageV * voltageV;
}

inline Nameplate plateOf(LoadModel model, double voltageV, double currentA) {
  Nameplate plate;
  plate.model = model;
  plate.voltage = units::Voltage::fromSi(voltageV);
  plate.current = units::Current::fromSi(currentA);
  return plate;
}

inline std::shared_ptr<const LoadLaw> lawOf(const Nameplate& plate) { return makeLoadLaw(plate).value(); }

// Open-circuit volts that leave `voltageV` at the terminals behind a series resistance.
inline double sourceVoltageV(const LoadLaw& law, double voltageV, double seriesOhm) {
  return std::abs(voltageV * (1.0 + law.at(voltageV).admittanceS * seriesOhm));
}

// Terminal volts on the upper branch behind a series resistance, or 0 when there is no running point.
inline double runningVoltageV(const LoadLaw& law, double openV, double seriesOhm) {
  double v = openV;
  for (double step = openV / 2000.0; v > law.pullOutVoltageV(); v -= step) {
    if (sourceVoltageV(law, v - step, seriesOhm) > openV) continue;
    if (v - step <= law.pullOutVoltageV()) return 0.0;
    double low = v - step;
    double high = v;
    for (int i = 0; i < 60; ++i) {
      const double middle = 0.5 * (low + high);
      (sourceVoltageV(law, middle, seriesOhm) > openV ? high : low) = middle;
    }
    return low;
  }
  return 0.0;
}

}  // namespace cordreach::physics
