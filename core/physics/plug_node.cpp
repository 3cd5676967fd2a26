// SPDX-License-Identifier: GPL-3.0-or-later
// One exponential a stretch of constant current.
#include "physics/plug_node.h"

#include <cmath>

#include "base/contract.h"
#include "physics/cord_ladder.h"

namespace cordreach::physics {

PlugNode::PlugNode(units::WireSize size, PlugContacts contacts, units::Temperature around)
    : m_size(size), m_contacts(contacts), m_around(around), m_timeConstant(plugTimeConstant(size)) {}

units::TemperatureRise PlugNode::steadyRise(units::Current rms) const {
  return contactHeat(m_size, m_contacts.line, m_contacts.neutral, rms).rise;
}

void PlugNode::advance(units::Current rms, units::Duration duration) {
  CORDREACH_EXPECTS(duration >= units::Duration{});
  const units::TemperatureRise end = steadyRise(rms);
  m_rise = end + (m_rise - end) * std::exp(-(duration / m_timeConstant));
  m_beyond = m_beyond || now() > beyondModelTemperature();
}

std::optional<units::Duration> PlugNode::timeToRise(units::TemperatureRise rise, units::Current rms,
                                                    units::Duration horizon) const {
  if (m_rise >= rise) return units::Duration{};
  const units::TemperatureRise end = steadyRise(rms);
  if (end <= rise) return std::nullopt;
  const units::Duration at = m_timeConstant * std::log((end - m_rise) / (end - rise));
  return at <= horizon ? std::optional(at) : std::nullopt;
}

void PlugNode::changeSurroundings(units::Temperature around) {
  m_rise = now() - around;
  m_around = around;
}

}  // namespace cordreach::physics
