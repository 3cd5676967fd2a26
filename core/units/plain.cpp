// SPDX-License-Identifier: GPL-3.0-or-later
// Shortest round-trip text of a double.
#include "units/plain.h"

#include <array>
#include <charconv>
#include <cmath>

#include "base/contract.h"

namespace cordreach::units {

std::string plain(double value) {
  CORDREACH_EXPECTS(std::isfinite(value));
  if (value == 0.0) return "0";  // also for -0
  const double magnitude = std::abs(value);
  const bool fixed = magnitude >= 1e-5 && magnitude < 1e15;
  std::array<char, 48> buffer{};
  const auto result = fixed
                          ? std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::fixed)
                          : std::to_chars(buffer.data(), buffer.data() + buffer.size(), value);
  CORDREACH_EXPECTS(result.ec == std::errc());
  return {buffer.data(), result.ptr};
}

}  // namespace cordreach::units
