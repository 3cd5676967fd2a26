// SPDX-License-Identifier: GPL-3.0-or-later
#include "timeline/wire_warmth.h"

#include <cmath>

namespace cordreach::timeline {

std::optional<units::Duration> WireWarmth::carry(const BranchAmps& amps, units::Duration duration,
                                                 units::Temperature limit) {
  const bool below = conductor() < limit;
  const double before = m_poleA2;
  const double towards = amps.poleA * amps.poleA;
  const double left = std::exp(-(duration / kWireTimeConstant));
  m_poleA2 = towards + (m_poleA2 - towards) * left;
  const double neutralTowards = amps.neutralA * amps.neutralA;
  m_neutralA2 = neutralTowards + (m_neutralA2 - neutralTowards) * left;
  if (!below || conductor() < limit) return std::nullopt;
  // Its rise goes as the square that it has felt.
  const double warmest = (conductor() - m_temperatureAt(0.0)).si();
  const double passing = m_poleA2 * (limit - m_temperatureAt(0.0)).si() / warmest;
  return kWireTimeConstant * std::log((towards - before) / (towards - passing));
}

network::Branch WireWarmth::branch() const { return m_heat->warm(std::sqrt(m_poleA2), std::sqrt(m_neutralA2)); }

units::Temperature WireWarmth::conductor() const { return m_temperatureAt(std::sqrt(m_poleA2)); }

}  // namespace cordreach::timeline
