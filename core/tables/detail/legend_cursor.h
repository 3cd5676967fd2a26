// SPDX-License-Identifier: GPL-3.0-or-later
// A place in a plain legend, and the small steps that reading takes from it.
#pragma once

#include <initializer_list>
#include <optional>
#include <string_view>

namespace cordreach::tables::detail {

// A number of at most six characters, maybe with unreadable ones among them.
struct PrintedNumber {
  std::string_view text;
  double value = 0.0;  // meaningless when worn
  bool worn = false;
  bool decimal = false;

  [[nodiscard]] bool isWhole(int low, int high) const;
};

class LegendCursor {
 public:
  explicit LegendCursor(std::string_view text) : m_rest(text) {}

  [[nodiscard]] bool atEnd() const { return m_rest.empty(); }
  // At a space or the end.
  [[nodiscard]] bool atBoundary() const { return m_rest.empty() || m_rest.front() == ' '; }
  [[nodiscard]] std::string_view token() const { return m_rest.substr(0, m_rest.find(' ')); }
  [[nodiscard]] std::string_view rest() const { return m_rest; }

  void skip(std::size_t count) { m_rest.remove_prefix(count); }
  void skipSpaces();
  bool take(std::string_view piece);
  // The first of the words, longest first, that stands here.
  bool takeAny(std::initializer_list<std::string_view> words);
  std::optional<PrintedNumber> takeNumber();

 private:
  std::string_view m_rest;
};

}  // namespace cordreach::tables::detail
