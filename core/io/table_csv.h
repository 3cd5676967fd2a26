// SPDX-License-Identifier: GPL-3.0-or-later
// Tables as comma separated values (RFC 4180), and as spreadsheets put them on the clipboard.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "base/result.h"
#include "io/table.h"

namespace cordreach::io {

inline constexpr std::size_t kMostTableMb = 16;
inline constexpr std::size_t kMostTableRows = 50'000;
inline constexpr std::size_t kMostTableColumns = 200;

// Of a file in any encoding that toUtf8() knows, its cells apart by commas, semicolons or tabs, whichever its first row
// has most of. Errors: csv.empty, csv.too_large {limit_mb}, csv.too_many_rows {limit}, csv.too_many_columns {row
// limit}, csv.unknown_encoding, csv.bad_quotes {row}: a quote that does not close, or that stands within a cell without
// quotes.
[[nodiscard]] base::Result<Table> readTableCsv(std::string_view bytes);

// A cell quoted and inert: for texts among the plain numbers of a table that is written row by row.
[[nodiscard]] std::string csvText(std::string_view cell);

// UTF-8 with its mark, without which spreadsheets take it for something else; every cell quoted and inert.
[[nodiscard]] std::string writeTableCsv(const Table& table);

// Cells apart by tabs. A quote begins a quoted cell only at its front: 5'6" is copied as it stands. Errors as above.
[[nodiscard]] base::Result<Table> readTableTsv(std::string_view text);
// Cells with a tab, a line end or a quote in them are quoted; every cell inert.
[[nodiscard]] std::string writeTableTsv(const Table& table);

}  // namespace cordreach::io
