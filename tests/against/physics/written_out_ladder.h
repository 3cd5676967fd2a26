// SPDX-License-Identifier: GPL-3.0-or-later
// The cord ladder's equations written out a second time from its header, for an integrator that is not ours: only the
// numbers of a ladder are taken over, no function of the core is called.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "physics/cord_ladder.h"

namespace cordreach::testing {

class WrittenOutLadder {
 public:
  WrittenOutLadder(const physics::CordLadder& ladder, double airC) : m_ladder(ladder), m_airC(airC) {}

  void setCurrent(double rmsA) { m_currentA = rmsA; }

  // Kelvin a second of the three nodes at those temperatures in Celsius.
  [[nodiscard]] std::array<double, 3> rates(const std::array<double, 3>& nodesC) const {
    const auto& c = m_ladder.capacityJPerMK;
    const double heat = m_currentA * m_currentA * m_ladder.ohmPerM20 * (1 + m_ladder.alphaPerK * (nodesC[0] - 20));
    const double from0To1 = (nodesC[0] - nodesC[1]) / m_ladder.resistance01;
    const double from1To2 = (nodesC[1] - nodesC[2]) / m_ladder.resistance12;
    const double out = lossAt(surfaceC(nodesC[2]));
    return {(m_ladder.sourceShare * heat - from0To1) / c[0], (from0To1 - from1To2) / c[1],
            ((1 - m_ladder.sourceShare) * heat + from1To2 - out) / c[2]};
  }

  // (T2 - Ts)/R2s = loss(Ts), halved until the doubles meet.
  [[nodiscard]] double surfaceC(double nodeC) const {
    double low = std::min(nodeC, m_airC);
    double high = std::max(nodeC, m_airC);
    for (int i = 0; i < 80; ++i) {
      const double middle = 0.5 * (low + high);
      (lossAt(middle) > (nodeC - middle) / m_ladder.resistance2s ? high : low) = middle;
    }
    return 0.5 * (low + high);
  }

 private:
  [[nodiscard]] double lossAt(double surfaceC) const {
    const physics::CordSurface& s = m_ladder.surface;
    const double rise = surfaceC - m_airC;
    if (s.throughCover) return s.scale * rise / s.throughCover->si();
    const double hotK = surfaceC + 273.15;
    const double airK = m_airC + 273.15;
    const double radiation = s.emissivity * 5.670374419e-8 * (hotK * hotK + airK * airK) * (hotK + airK);
    return std::numbers::pi * s.diameter.si() * s.scale * rise *
           (s.convectionFactor * convection(0.5 * (hotK + airK), rise) + s.radiationFactor * radiation);
  }

  [[nodiscard]] double convection(double filmK, double riseK) const {
    const double d = m_ladder.surface.diameter.si();
    const double density = 101325.0 / (287.05 * filmK);
    const double conductivity = 0.02414 * std::pow(filmK / 273.15, 1.5) * 467.15 / (filmK + 194.0);
    const double viscosity = 1.716e-5 * std::pow(filmK / 273.15, 1.5) * 383.55 / (filmK + 110.4) / density;
    const double diffusivity = conductivity / (density * 1006.0);
    const double ra = 9.80665 / filmK * std::abs(riseK) * d * d * d / (viscosity * diffusivity);
    const bool morgan = m_ladder.surface.law == physics::ConvectionLaw::Morgan;
    return (morgan ? nusseltMorgan(ra) : nusseltChurchillChu(ra, viscosity / diffusivity)) * conductivity / d;
  }

  static double nusseltMorgan(double ra) {
    if (ra <= 1e-2) return 0.675 * std::pow(ra, 0.058);
    if (ra <= 1e2) return 1.02 * std::pow(ra, 0.148);
    if (ra <= 1e4) return 0.850 * std::pow(ra, 0.188);
    if (ra <= 1e7) return 0.480 * std::pow(ra, 0.250);
    return 0.125 * std::pow(ra, 0.333);
  }

  static double nusseltChurchillChu(double ra, double prandtl) {
    const double fluid = std::pow(1 + std::pow(0.559 / prandtl, 9.0 / 16.0), 8.0 / 27.0);
    return std::pow(0.60 + 0.387 * std::pow(ra, 1.0 / 6.0) / fluid, 2);
  }

  const physics::CordLadder m_ladder;
  double m_airC;
  double m_currentA = 0;
};

}  // namespace cordreach::testing
