// SPDX-License-Identifier: GPL-3.0-or-later
// Counts columns by code point and fills lines greedily.
#include "text/columns.h"

#include <algorithm>
#include <cstdint>

namespace cordreach::text {

namespace {

constexpr std::string_view kNarrowSpace = "\u202F";
constexpr std::string_view kHardSpace = "\u00A0";
constexpr std::string_view kEllipsis = "\u2026";

// Bytes of the character that starts there; 1 for a broken one.
std::size_t lengthAt(std::string_view text, std::size_t at) {
  const auto lead = static_cast<unsigned char>(text[at]);
  const std::size_t length = lead < 0x80   ? 1
                             : lead < 0xC2 ? 1
                             : lead < 0xE0 ? 2
                             : lead < 0xF0 ? 3
                             : lead < 0xF5 ? 4
                                           : 1;
  if (at + length > text.size()) return 1;
  for (std::size_t i = 1; i < length; ++i) {
    if ((static_cast<unsigned char>(text[at + i]) & 0xC0) != 0x80) return 1;
  }
  return length;
}

std::uint32_t codePointAt(std::string_view text, std::size_t at, std::size_t length) {
  if (length == 1) return static_cast<unsigned char>(text[at]);
  std::uint32_t point = static_cast<unsigned char>(text[at]) & (0xFFU >> (length + 1));
  for (std::size_t i = 1; i < length; ++i) point = point << 6 | (static_cast<unsigned char>(text[at + i]) & 0x3FU);
  return point;
}

bool isBetween(std::uint32_t point, std::uint32_t first, std::uint32_t last) { return point >= first && point <= last; }

std::size_t columnsOfPoint(std::uint32_t point) {
  if (isBetween(point, 0x0300, 0x036F) || isBetween(point, 0x200B, 0x200F) || isBetween(point, 0xFE00, 0xFE0F))
    return 0;
  const bool wide = isBetween(point, 0x1100, 0x115F) || isBetween(point, 0x2E80, 0xA4CF) ||
                    isBetween(point, 0xAC00, 0xD7A3) || isBetween(point, 0xF900, 0xFAFF) ||
                    isBetween(point, 0xFE30, 0xFE6F) || isBetween(point, 0xFF00, 0xFF60) ||
                    isBetween(point, 0x1F300, 0x1FAFF) || isBetween(point, 0x20000, 0x3FFFD);
  return wide ? 2 : 1;
}

// Bytes that fit into that many columns.
std::size_t bytesWithin(std::string_view text, std::size_t columns) {
  std::size_t used = 0;
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t length = lengthAt(text, at);
    used += columnsOfPoint(codePointAt(text, at, length));
    if (used > columns) break;
    at += length;
  }
  return at;
}

std::vector<std::string_view> wordsOf(std::string_view text) {
  std::vector<std::string_view> words;
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t from = text.find_first_not_of(" \n", at);
    if (from == std::string_view::npos) break;
    const std::size_t end = std::min(text.find_first_of(" \n", from), text.size());
    words.push_back(text.substr(from, end - from));
    at = end;
  }
  return words;
}

std::string padded(std::string_view text, std::size_t width, Align align) {
  std::string cell = cutTo(text, width);
  const std::string space(width - columnsOf(cell), ' ');
  return align == Align::Left ? cell + space : space + cell;
}

std::string rowText(const std::vector<Column>& columns, const std::vector<std::size_t>& widths,
                    const std::vector<std::string>& cells) {
  std::string line;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    line += (i == 0 ? "" : "  ") + padded(i < cells.size() ? cells[i] : "", widths[i], columns[i].align);
  }
  line.erase(line.find_last_not_of(' ') + 1);
  return line + "\n";
}

std::vector<std::size_t> widthsOf(const std::vector<Column>& columns, const std::vector<std::vector<std::string>>& rows,
                                  std::size_t width) {
  std::vector<std::size_t> widths;
  std::size_t total = 2 * (columns.empty() ? 0 : columns.size() - 1);
  for (std::size_t i = 0; i < columns.size(); ++i) {
    widths.push_back(columnsOf(columns[i].head));
    for (const auto& row : rows) widths[i] = std::max(widths[i], i < row.size() ? columnsOf(row[i]) : 0);
    total += widths[i];
  }
  // Figures are never cut; names give way.
  while (total > width) {
    std::size_t* widest = nullptr;
    for (std::size_t i = 0; i < columns.size(); ++i) {
      if (columns[i].align == Align::Left && (widest == nullptr || widths[i] > *widest)) widest = &widths[i];
    }
    if (widest == nullptr || *widest <= 1) break;
    --*widest;
    --total;
  }
  return widths;
}

}  // namespace

std::size_t columnsOf(std::string_view text) {
  std::size_t columns = 0;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = lengthAt(text, at);
    columns += columnsOfPoint(codePointAt(text, at, length));
    at += length;
  }
  return columns;
}

std::string cutTo(std::string_view text, std::size_t columns) {
  if (columnsOf(text) <= columns) return std::string(text);
  if (columns == 0) return {};
  return std::string(text.substr(0, bytesWithin(text, columns - 1))) + std::string(kEllipsis);
}

std::string wrapped(std::string_view text, const Indent& indent, std::size_t width) {
  std::string result;
  std::string line = indent.first;
  bool lineIsEmpty = true;
  const auto newLine = [&] {
    result += line + "\n";
    line = indent.rest;
    lineIsEmpty = true;
  };
  for (std::string_view word : wordsOf(text)) {
    if (!lineIsEmpty && columnsOf(line) + 1 + columnsOf(word) > width) newLine();
    while (lineIsEmpty && columnsOf(line) + columnsOf(word) > width && columnsOf(line) < width) {
      const std::size_t bytes = std::max<std::size_t>(bytesWithin(word, width - columnsOf(line)), 1);
      line += word.substr(0, bytes);
      word.remove_prefix(bytes);
      newLine();
    }
    line += (lineIsEmpty ? "" : " ") + std::string(word);
    lineIsEmpty = false;
  }
  return result + line + "\n";
}

std::string tableText(const std::vector<Column>& columns, const std::vector<std::vector<std::string>>& rows,
                      std::size_t width) {
  const std::vector<std::size_t> widths = widthsOf(columns, rows, width);
  std::vector<std::string> heads;
  for (const Column& column : columns) heads.push_back(column.head);
  std::string table = rowText(columns, widths, heads);
  for (const auto& row : rows) table += rowText(columns, widths, row);
  return table;
}

std::string forConsole(std::string_view text) {
  std::string plain;
  plain.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = lengthAt(text, at);
    const std::string_view character = text.substr(at, length);
    const auto byte = static_cast<unsigned char>(character.front());
    if (character == kNarrowSpace || character == kHardSpace) {
      plain += ' ';
    } else if (length == 1 && ((byte < 0x20 && byte != '\n') || byte == 0x7F || byte >= 0x80)) {
      plain += '?';
    } else {
      plain += character;
    }
    at += length;
  }
  return plain;
}

}  // namespace cordreach::text
