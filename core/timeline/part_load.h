// SPDX-License-Identifier: GPL-3.0-or-later
// A part of what a load draws by its law, at any voltage, harmonics with it.
#pragma once

#include <memory>
#include <utility>

#include "physics/load_law.h"

namespace cordreach::timeline {

// A charger whose battery fills. `share`: 0 to 1.
class PartLoad : public physics::LoadLaw {
 public:
  PartLoad(std::shared_ptr<const physics::LoadLaw> whole, double share) : m_whole(std::move(whole)), m_share(share) {}
  [[nodiscard]] physics::LoadPoint at(double voltageV) const override {
    physics::LoadPoint point = m_whole->at(voltageV);
    point.admittanceS *= m_share;
    point.admittanceSlopeSPerV *= m_share;
    point.distortionA *= m_share;
    point.thirdHarmonicA *= m_share;
    return point;
  }

 private:
  std::shared_ptr<const physics::LoadLaw> m_whole;
  double m_share;
};

}  // namespace cordreach::timeline
