// SPDX-License-Identifier: GPL-3.0-or-later
// The likely ladder, and beside it the corner's, joined by the same rule as the steady band.
#include "physics/cord_transient.h"

#include <algorithm>

#include "physics/cord_heat.h"

namespace cordreach::physics {

CordTransient::CordTransient(const CordSection& section, units::Temperature ambient, Corner corner)
    : m_section(section), m_corner(corner), m_likely(ladderOf(section, Corner::Likely), ambient) {
  if (corner != Corner::Likely) m_ofCorner.emplace(ladderOf(section, corner), ambient);
}

void CordTransient::advance(units::Current rms, units::Duration duration) {
  m_likely.advance(rms, duration);
  if (m_ofCorner) m_ofCorner->advance(rms, duration);
  m_beyond = m_beyond || ranBeyond();
}

std::optional<units::Duration> CordTransient::timeToReach(units::Temperature limit, units::Current rms,
                                                          units::Duration horizon) const {
  LadderRun likely = m_likely;
  if (!m_ofCorner) return likely.advanceUntil(rms, horizon, limit);
  LadderRun ofCorner = *m_ofCorner;
  const units::Temperature air = m_likely.air();
  const units::Temperature likelyLimit = air + (limit - air) / layingRiseFactor(m_section.laying, m_corner);
  const auto first = ofCorner.advanceUntil(rms, horizon, limit);
  const auto second = likely.advanceUntil(rms, horizon, likelyLimit);
  if (m_corner == Corner::Low) {
    if (!first || !second) return std::nullopt;
    return std::max(*first, *second);
  }
  if (!first || !second) return first ? first : second;
  return std::min(*first, *second);
}

void CordTransient::lay(const CordSection& section, units::Temperature ambient) {
  m_section = section;
  m_likely.changeSurroundings(ladderOf(section, Corner::Likely), ambient);
  if (m_ofCorner) m_ofCorner->changeSurroundings(ladderOf(section, m_corner), ambient);
}

HeatResult CordTransient::now() const {
  if (!m_ofCorner) return m_likely.now();
  return widerOf(m_ofCorner->now(), m_likely.now(), m_likely.air(), m_section.laying, m_corner);
}

bool CordTransient::beyondModel() const { return m_beyond; }

bool CordTransient::ranBeyond() const {
  if (!m_ofCorner) return m_likely.beyondModel();
  if (m_corner == Corner::Low) return m_ofCorner->beyondModel();
  return m_ofCorner->beyondModel() || m_likely.beyondModel() || now().conductor > beyondModelTemperature();
}

void CordTransient::setToleranceK(double toleranceK) {
  m_likely.setToleranceK(toleranceK);
  if (m_ofCorner) m_ofCorner->setToleranceK(toleranceK);
}

}  // namespace cordreach::physics
