// SPDX-License-Identifier: GPL-3.0-or-later
// Legend text to plain capitals.
#include "tables/detail/legend_text.h"

#include <array>
#include <cstddef>
#include <utility>

namespace cordreach::tables::detail {
namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, 9> kSpelled{{{"\u00B0", ""},     // degree
                                                                                 {"\u00BA", ""},     // its look-alike
                                                                                 {"\u2103", "C"},    // degree Celsius
                                                                                 {"\u00B2", "2"},    // square
                                                                                 {"\u00D7", "X"},    // times
                                                                                 {"\u00AE", " "},    // registered
                                                                                 {"\u2122", " "},    // trade mark
                                                                                 {"\u00A0", " "},    // no-break space
                                                                                 {"\u2212", "-"}}};  // minus

bool isDigit(char c) { return c >= '0' && c <= '9'; }

// The plain form of one ASCII character; `inNumber`: a digit stands on both sides.
char plainAscii(char c, bool inNumber) {
  if (c >= 'a' && c <= 'z') return static_cast<char>(c - 'a' + 'A');
  if (c == ',') return inNumber ? '.' : ' ';
  constexpr std::string_view kSeparators = "()[]{}<>;|\"'\\=&~:";
  const bool unprintable = c < 0x20 || c == 0x7F;
  return unprintable || kSeparators.find(c) != std::string_view::npos ? ' ' : c;
}

}  // namespace

std::string plainLegend(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  std::size_t at = 0;
  while (at < text.size()) {
    const char c = text[at];
    if (static_cast<unsigned char>(c) < 0x80) {
      const bool inNumber = !out.empty() && isDigit(out.back()) && at + 1 < text.size() && isDigit(text[at + 1]);
      out += plainAscii(c, inNumber);
      ++at;
      continue;
    }
    bool known = false;
    for (const auto& [spelling, plain] : kSpelled) {
      if (!text.substr(at).starts_with(spelling)) continue;
      out += plain;
      at += spelling.size();
      known = true;
      break;
    }
    if (known) continue;
    out += '?';
    // The further bytes of the same character are no further characters.
    do ++at;
    while (at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U);
  }
  return out;
}

}  // namespace cordreach::tables::detail
