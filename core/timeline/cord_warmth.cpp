// SPDX-License-Identifier: GPL-3.0-or-later
#include "timeline/cord_warmth.h"

#include "base/contract.h"

namespace cordreach::timeline {

CordWarmth::CordWarmth(const Inputs& inputs) : m_inputs(inputs), m_worst(inputs.worst, inputs.air) {
  m_worst.setToleranceK(inputs.toleranceK);
  if (!inputs.elsewhere) return;
  m_elsewhere.emplace(*inputs.elsewhere, inputs.air);
  m_elsewhere->setToleranceK(inputs.toleranceK);
}

std::optional<units::Duration> CordWarmth::carry(const BranchAmps& amps, units::Duration duration,
                                                 units::Temperature limit) {
  const units::Current rms = amps.largest() * units::ampere;
  if (m_elsewhere) m_elsewhere->advance(rms, duration);
  if (conductor() >= limit) {
    m_worst.advance(rms, duration);
    return std::nullopt;
  }
  const auto reached = m_worst.advanceUntil(rms, duration, limit);
  if (reached) m_worst.advance(rms, duration - *reached);
  return reached;
}

void CordWarmth::layAs(const Warmth& other) {
  const auto* cord = dynamic_cast<const CordWarmth*>(&other);
  CORDREACH_EXPECTS(cord != nullptr);
  m_inputs = cord->m_inputs;
  if (!m_inputs.elsewhere) {
    m_elsewhere.reset();
  } else {
    // What was all of a piece begins as warm as it was.
    if (!m_elsewhere) m_elsewhere = m_worst;
    m_elsewhere->changeSurroundings(*m_inputs.elsewhere, m_inputs.air);
  }
  m_worst.changeSurroundings(m_inputs.worst, m_inputs.air);
}

network::Branch CordWarmth::branch() const {
  const units::Temperature worst = conductor();
  return m_inputs.branch(worst, m_elsewhere ? m_elsewhere->now().conductor : worst);
}

}  // namespace cordreach::timeline
