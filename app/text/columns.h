// SPDX-License-Identifier: GPL-3.0-or-later
// Text in columns of a fixed-width screen: UTF-8 aware widths, wrapping, tables. U+202F and U+00A0 never break.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace cordreach::text {

inline constexpr std::size_t kPageWidth = 80;

// Columns that it takes: combining marks none, East Asian wide characters and emoji two, a broken byte one.
[[nodiscard]] std::size_t columnsOf(std::string_view text);

// At most that many columns; what had to go is marked by an ellipsis.
[[nodiscard]] std::string cutTo(std::string_view text, std::size_t columns);

struct Indent {
  std::string first;
  std::string rest;
};

// Lines of at most `width` columns, each ended by a newline; a word longer than a line is broken.
[[nodiscard]] std::string wrapped(std::string_view text, const Indent& indent = {}, std::size_t width = kPageWidth);

enum class Align { Left, Right };

struct Column {
  std::string head;
  Align align = Align::Left;
};

// Columns as wide as their content, two apart; when the page is too narrow the widest left-aligned one is cut.
[[nodiscard]] std::string tableText(const std::vector<Column>& columns,
                                    const std::vector<std::vector<std::string>>& rows, std::size_t width = kPageWidth);

// For a console: narrow and ordinary no-break spaces become plain ones, control characters question marks.
[[nodiscard]] std::string forConsole(std::string_view text);

}  // namespace cordreach::text
