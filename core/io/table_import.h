// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of a table into one edit of a site: which column is which, what each row would do, which are refused and why.
// What a row means is its listing's business, given as a RowReader.
#pragma once

#include <cstddef>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "base/result.h"
#include "io/table.h"
#include "site/edit.h"

namespace cordreach::io {

struct ImportColumn {
  std::string key;                 // stable: "breaker_rating"
  std::vector<std::string> names;  // what its heading may say, in words
};

// For each column of the table which of the import columns it is, by its place among them; none: left out.
using ColumnMatch = std::vector<std::optional<std::size_t>>;

// Guesses by the headings: the key or one of the names, capitals and marks not looked at, else a heading that begins
// or ends with one. Each import column is given once at most.
[[nodiscard]] ColumnMatch matchColumns(const TableRow& headings, const std::vector<ImportColumn>& columns);

using Cells = std::map<std::string, std::string>;  // by the import column's key; only those that the row has

struct RowChange {
  std::string subject;                      // of what it is about, to notice a second row about the same: an id
  std::optional<site::AnyChange> change{};  // none: all is as the row says already
  bool adds = false;
};
struct RowFault {
  base::Error error;
  std::string column{};  // the import column's key; empty: the row as a whole
};
using RowReader = std::function<std::variant<RowChange, RowFault>(const Cells& cells)>;

enum class RowFate { Adds, Changes, Same, Refused };

struct ImportedRow {
  std::size_t number = 0;  // in the file, its heading being 1
  RowFate fate = RowFate::Same;
  std::optional<RowFault> fault{};
};

struct ImportPreview {
  std::vector<ImportedRow> rows;  // without the empty ones
  site::Edit edit;                // of all rows that are not refused
};

// Each row by itself: one that is refused, by the reader or because the site could not hold it, takes no other with it.
// Errors of rows are the reader's, those of site::apply, and import.named_twice {row}.
[[nodiscard]] ImportPreview previewImport(const site::Site& site, const Table& table, const ColumnMatch& match,
                                          const std::vector<ImportColumn>& columns, const RowReader& read,
                                          std::string code);

}  // namespace cordreach::io
