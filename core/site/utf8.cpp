// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/utf8.h"

namespace cordreach::site {
namespace {

unsigned byteAt(std::string_view text, std::size_t at) {
  return at < text.size() ? static_cast<unsigned char>(text[at]) : 0u;
}

bool continues(unsigned byte, unsigned lowest = 0x80, unsigned highest = 0xBF) {
  return byte >= lowest && byte <= highest;
}

// Bytes of the character that starts here; 0: none does.
std::size_t characterLength(std::string_view text, std::size_t at) {
  const unsigned first = byteAt(text, at);
  const unsigned second = byteAt(text, at + 1);
  if (first < 0x80) return 1;
  if (first >= 0xC2 && first <= 0xDF) return continues(second) ? 2 : 0;
  if (first >= 0xE0 && first <= 0xEF) {
    const bool secondFits = continues(second, first == 0xE0 ? 0xA0 : 0x80, first == 0xED ? 0x9F : 0xBF);
    return secondFits && continues(byteAt(text, at + 2)) ? 3 : 0;
  }
  if (first >= 0xF0 && first <= 0xF4) {
    const bool secondFits = continues(second, first == 0xF0 ? 0x90 : 0x80, first == 0xF4 ? 0x8F : 0xBF);
    return secondFits && continues(byteAt(text, at + 2)) && continues(byteAt(text, at + 3)) ? 4 : 0;
  }
  return 0;
}

}  // namespace

std::size_t validUtf8Length(std::string_view text) {
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t length = characterLength(text, at);
    if (length == 0) return at;
    at += length;
  }
  return at;
}

}  // namespace cordreach::site
