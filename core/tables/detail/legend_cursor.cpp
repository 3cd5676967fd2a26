// SPDX-License-Identifier: GPL-3.0-or-later
// Small steps through a legend.
#include "tables/detail/legend_cursor.h"

#include <charconv>
#include <cstddef>

#include "tables/detail/legend_type.h"

namespace cordreach::tables::detail {
namespace {

constexpr std::size_t kLongestNumber = 6;

bool isDigit(char c) { return c >= '0' && c <= '9'; }

}  // namespace

bool PrintedNumber::isWhole(int low, int high) const {
  return !worn && !decimal && text.front() != '0' && value >= low && value <= high;
}

void LegendCursor::skipSpaces() {
  while (!m_rest.empty() && m_rest.front() == ' ') m_rest.remove_prefix(1);
}

bool LegendCursor::take(std::string_view piece) {
  if (!m_rest.starts_with(piece)) return false;
  m_rest.remove_prefix(piece.size());
  return true;
}

bool LegendCursor::takeAny(std::initializer_list<std::string_view> words) {
  for (const auto word : words) {
    if (take(word)) return true;
  }
  return false;
}

std::optional<PrintedNumber> LegendCursor::takeNumber() {
  const auto at = [&](std::size_t i) { return i < m_rest.size() ? m_rest[i] : ' '; };
  PrintedNumber number;
  std::size_t length = 0;
  for (; length < m_rest.size(); ++length) {
    const char c = m_rest[length];
    // `3*1.5` is three cores of 1.5, not an unreadable digit.
    const bool times = c == '*' && length > 0 && isDigit(at(length - 1)) && isDigit(at(length + 1));
    const bool point = c == '.' && !number.decimal && isDigit(at(length + 1));
    if (times || (!isDigit(c) && !point && !isWorn(c))) break;
    number.decimal = number.decimal || point;
    number.worn = number.worn || isWorn(c);
  }
  if (length == 0 || length > kLongestNumber) return std::nullopt;
  number.text = m_rest.substr(0, length);
  if (!number.worn) std::from_chars(number.text.data(), number.text.data() + length, number.value);
  m_rest.remove_prefix(length);
  return number;
}

}  // namespace cordreach::tables::detail
