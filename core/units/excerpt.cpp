// SPDX-License-Identifier: GPL-3.0-or-later
// Cutting and cleaning text of unknown origin.
#include "units/excerpt.h"

#include <cstddef>

namespace cordreach::units {
namespace {

constexpr std::size_t kMostBytes = 60;

// Length of the well-formed UTF-8 character at `at` (RFC 3629: no overlong forms, no surrogates), or 0.
std::size_t characterLength(std::string_view text, std::size_t at) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned first = byte(at);
  if (first < 0x80) return 1;
  const std::size_t length = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
  if (first < 0xC2 || first > 0xF4 || at + length > text.size()) return 0;
  for (std::size_t i = 1; i < length; ++i) {
    if ((byte(at + i) & 0xC0U) != 0x80U) return 0;
  }
  const unsigned second = byte(at + 1);
  const bool overlong = (first == 0xE0 && second < 0xA0) || (first == 0xF0 && second < 0x90);
  const bool beyond = (first == 0xED && second >= 0xA0) || (first == 0xF4 && second >= 0x90);
  return overlong || beyond ? 0 : length;
}

}  // namespace

std::string excerpt(std::string_view text) {
  std::string out;
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t length = characterLength(text, at);
    const std::size_t added = length == 0 ? 1 : length;
    if (out.size() + added > kMostBytes) return out + "...";
    const auto byte = static_cast<unsigned char>(text[at]);
    if (length == 0) {
      out += '?';
    } else if (byte < 0x20 || byte == 0x7F) {
      out += ' ';
    } else {
      out += text.substr(at, length);
    }
    at += added;
  }
  return out;
}

}  // namespace cordreach::units
