// SPDX-License-Identifier: GPL-3.0-or-later
// Gauge geometry.
#include "units/wire_size.h"

#include <cmath>
#include <numbers>

#include "base/contract.h"
#include "units/plain.h"

namespace cordreach::units {

WireSize WireSize::awg(int number) {
  CORDREACH_EXPECTS(number >= kHeaviestAwg && number <= kLightestAwg);
  return {true, static_cast<double>(number)};
}

WireSize WireSize::squareMillimetres(double nominal) {
  CORDREACH_EXPECTS(std::isfinite(nominal) && nominal > 0.0);
  return {false, nominal};
}

std::optional<int> WireSize::awgNumber() const {
  if (!m_isAwg) return std::nullopt;
  return static_cast<int>(m_number);
}

std::optional<double> WireSize::metricMm2() const {
  if (m_isAwg) return std::nullopt;
  return m_number;
}

Length WireSize::solidDiameter() const {
  if (m_isAwg) return 0.127 * std::pow(92.0, (36.0 - m_number) / 39.0) * millimetre;
  return std::sqrt(4.0 * m_number / std::numbers::pi) * millimetre;
}

Area WireSize::area() const {
  if (!m_isAwg) return m_number * squareMillimetre;
  const Length diameter = solidDiameter();
  return diameter * diameter * (std::numbers::pi / 4.0);
}

std::string WireSize::name() const {
  if (!m_isAwg) return plain(m_number) + " mm\u00B2";
  const int number = static_cast<int>(m_number);
  return number > 0 ? std::to_string(number) + " AWG" : std::to_string(1 - number) + "/0 AWG";
}

std::partial_ordering operator<=>(const WireSize& a, const WireSize& b) {
  if (a == b) return std::partial_ordering::equivalent;
  const auto byArea = a.area() <=> b.area();
  // A metric size of exactly a gauge's area is still another size; the gauge comes first.
  return byArea == std::partial_ordering::equivalent ? b.m_isAwg <=> a.m_isAwg : byArea;
}

}  // namespace cordreach::units
