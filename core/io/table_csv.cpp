// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/table_csv.h"

#include <csv.h>

#include <algorithm>
#include <array>
#include <cstdint>
#include <memory>
#include <utility>

#include "io/text_encoding.h"

namespace cordreach::io {
namespace {

using base::Error;

struct Records {
  Table done;
  TableRow current;
};

void takeCell(void* cell, std::size_t length, void* records) {
  const auto text = std::string_view(static_cast<const char*>(cell), length);
  static_cast<Records*>(records)->current.push_back(plainCell(text));
}

void takeRecord(int /*terminator*/, void* records) {
  auto& all = *static_cast<Records*>(records);
  all.done.push_back(std::exchange(all.current, {}));
}

// One kind of line end, so that the parser's count of rows is that of people.
std::string withPlainLineEnds(std::string_view text) {
  std::string plain;
  plain.reserve(text.size());
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (text[at] == '\r' && at + 1 < text.size() && text[at + 1] == '\n') continue;
    plain += text[at] == '\r' ? '\n' : text[at];
  }
  return plain;
}

// Of those that stand as often the one that is rarest in words.
char delimiterOf(std::string_view text) {
  std::array<std::pair<char, int>, 3> counts{{{'\t', 0}, {';', 0}, {',', 0}}};
  bool quoted = false;
  for (const char c : text) {
    if (c == '"') quoted = !quoted;
    if (quoted) continue;
    if (c == '\n') break;
    for (auto& [mark, count] : counts) count += c == mark ? 1 : 0;
  }
  const auto most =
      std::max_element(counts.begin(), counts.end(), [](const auto& a, const auto& c) { return a.second < c.second; });
  return most->second > 0 ? most->first : ',';
}

base::Result<Table> parsed(const std::string& text, char delimiter, bool strict) {
  csv_parser parser{};
  const int options = CSV_APPEND_NULL | CSV_REPALL_NL | (strict ? CSV_STRICT : 0);
  CORDREACH_EXPECTS(csv_init(&parser, static_cast<unsigned char>(options)) == 0);
  const std::unique_ptr<csv_parser, void (*)(csv_parser*)> freed(&parser, csv_free);
  csv_set_delim(&parser, static_cast<unsigned char>(delimiter));
  Records records;
  const bool read = csv_parse(&parser, text.data(), text.size(), takeCell, takeRecord, &records) == text.size();
  // Without CSV_STRICT the library takes a quote that is never closed for closed at the end.
  constexpr int kWithinCell = 2;  // FIELD_BEGUN, which its header does not name
  const bool open = parser.quoted != 0 && parser.pstate == kWithinCell;
  const bool whole = read && !open && csv_fini(&parser, takeCell, takeRecord, &records) == 0;
  if (!whole) return Error{"csv.bad_quotes", "", {{"row", static_cast<double>(records.done.size() + 1)}}};
  return std::move(records.done);
}

base::Result<Table> bounded(base::Result<Table> read) {
  if (!read) return read;
  Table& table = read.value();
  while (!table.empty() && table.back().empty()) table.pop_back();
  if (table.empty()) return Error{"csv.empty", "", {}};
  if (table.size() > kMostTableRows) {
    return Error{"csv.too_many_rows", "", {{"limit", static_cast<double>(kMostTableRows)}}};
  }
  for (std::size_t row = 0; row < table.size(); ++row) {
    if (table[row].size() <= kMostTableColumns) continue;
    return Error{"csv.too_many_columns",
                 "",
                 {{"row", static_cast<double>(row + 1)}, {"limit", static_cast<double>(kMostTableColumns)}}};
  }
  return read;
}

base::Result<std::string> textOf(std::string_view bytes) {
  if (bytes.size() > kMostTableMb * 1024 * 1024) {
    return Error{"csv.too_large", "", {{"limit_mb", static_cast<double>(kMostTableMb)}}};
  }
  auto text = toUtf8(bytes);
  if (!text) return text;
  return withPlainLineEnds(text.value());
}

std::string quoted(const std::string& cell) {
  std::string whole(2 * cell.size() + 2, '\0');
  whole.resize(csv_write2(whole.data(), whole.size(), cell.data(), cell.size(), '"'));
  return whole;
}

}  // namespace

base::Result<Table> readTableCsv(std::string_view bytes) {
  const auto text = textOf(bytes);
  if (!text) return text.error();
  return bounded(parsed(text.value(), delimiterOf(text.value()), true));
}

base::Result<Table> readTableTsv(std::string_view text) {
  const auto plain = textOf(text);
  if (!plain) return plain.error();
  return bounded(parsed(plain.value(), '\t', false));
}

std::string csvText(std::string_view cell) { return quoted(inertCell(cell)); }

std::string writeTableCsv(const Table& table) {
  std::string text = "\xEF\xBB\xBF";
  for (const TableRow& row : table) {
    for (std::size_t i = 0; i < row.size(); ++i) text += (i > 0 ? "," : "") + csvText(row[i]);
    text += "\r\n";
  }
  return text;
}

std::string writeTableTsv(const Table& table) {
  std::string text;
  for (const TableRow& row : table) {
    for (std::size_t i = 0; i < row.size(); ++i) {
      const std::string cell = inertCell(row[i]);
      const bool plain = cell.find_first_of("\t\n\r\"") == std::string::npos;
      text += (i > 0 ? "\t" : "") + (plain ? cell : quoted(cell));
    }
    text += '\n';
  }
  return text;
}

}  // namespace cordreach::io
