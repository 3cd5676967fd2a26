// SPDX-License-Identifier: GPL-3.0-or-later
#include "architecture/include_scanner.h"

#include <optional>
#include <sstream>

namespace cordreach::architecture {

namespace {

constexpr std::string_view kSpace = " \t\r";

// Drops blanks and, at a line's start, comments that end on the line, which may stand before or within a directive.
std::string_view skipBlanks(std::string_view text) {
  while (true) {
    const auto start = text.find_first_not_of(kSpace);
    if (start == std::string_view::npos) return {};
    text.remove_prefix(start);
    if (!text.starts_with("/*")) return text;
    const auto end = text.find("*/");
    if (end == std::string_view::npos) return {};
    text.remove_prefix(end + 2);
  }
}

std::optional<std::string_view> afterWord(std::string_view text, std::string_view word) {
  text = skipBlanks(text);
  if (!text.starts_with(word)) return std::nullopt;
  return skipBlanks(text.substr(word.size()));
}

std::optional<Include> includeIn(std::string_view line, int number) {
  const auto directive = afterWord(line, "#");
  if (!directive) return std::nullopt;
  const auto target = afterWord(*directive, "include");
  if (!target || target->empty()) return std::nullopt;
  const bool quoted = target->front() == '"';
  if (!quoted && target->front() != '<') return std::nullopt;
  const auto end = target->find(quoted ? '"' : '>', 1);
  if (end == std::string_view::npos) return std::nullopt;
  return Include{number, std::string(target->substr(1, end - 1)), quoted};
}

}  // namespace

std::vector<Include> includesOf(std::string_view text) {
  std::vector<Include> found;
  std::istringstream lines{std::string(text)};
  int number = 0;
  for (std::string line; std::getline(lines, line);) {
    if (auto include = includeIn(line, ++number)) found.push_back(std::move(*include));
  }
  return found;
}

}  // namespace cordreach::architecture
