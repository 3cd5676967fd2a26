// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/table_import.h"

#include <algorithm>
#include <span>
#include <variant>

namespace cordreach::io {
namespace {

// Letters and digits only, small.
std::string bare(std::string_view text) {
  std::string kept;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    const bool isLetter = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || byte >= 0x80;
    if (isLetter) kept += c;
    if (c >= 'A' && c <= 'Z') kept += static_cast<char>(c - 'A' + 'a');
  }
  return kept;
}

enum class Likeness { None, Part, Whole };

Likeness likeness(const std::string& heading, const ImportColumn& column) {
  Likeness best = heading == bare(column.key) ? Likeness::Whole : Likeness::None;
  for (const std::string& name : column.names) {
    const std::string wanted = bare(name);
    if (heading.empty() || wanted.empty()) continue;
    if (heading == wanted) return Likeness::Whole;
    if (heading.starts_with(wanted) || heading.ends_with(wanted)) best = std::max(best, Likeness::Part);
  }
  return best;
}

Cells cellsOf(const TableRow& row, const ColumnMatch& match, const std::vector<ImportColumn>& columns) {
  Cells cells;
  for (std::size_t i = 0; i < row.size() && i < match.size(); ++i) {
    if (match[i]) cells[columns.at(*match[i]).key] = row[i];
  }
  return cells;
}

bool isEmpty(const TableRow& row) {
  return std::all_of(row.begin(), row.end(),
                     [](const std::string& cell) { return cell.find_first_not_of(" \t\n") == std::string::npos; });
}

struct Accepted {
  std::size_t row = 0;  // among the preview's
  site::AnyChange change;
};

std::optional<base::Error> faultOf(const site::Site& site, std::span<const Accepted> accepted) {
  site::Edit edit{"import", {}};
  for (const Accepted& one : accepted) edit.changes.push_back(one.change);
  site::Site copy = site;
  const auto done = site::apply(edit, copy);
  return done ? std::nullopt : std::optional(done.error());
}

// Finds the rows that the site can't hold by halving: few of many are wrong, and each try looks at the whole site.
void sift(const site::Site& site, std::span<const Accepted> accepted, ImportPreview& preview) {
  if (accepted.empty()) return;
  const auto fault = faultOf(site, accepted);
  if (!fault) {
    for (const Accepted& one : accepted) preview.edit.changes.push_back(one.change);
  } else if (accepted.size() == 1) {
    ImportedRow& row = preview.rows[accepted.front().row];
    row.fate = RowFate::Refused;
    row.fault = RowFault{*fault, {}};
  } else {
    sift(site, accepted.first(accepted.size() / 2), preview);
    sift(site, accepted.subspan(accepted.size() / 2), preview);
  }
}

}  // namespace

ColumnMatch matchColumns(const TableRow& headings, const std::vector<ImportColumn>& columns) {
  ColumnMatch match(headings.size());
  std::vector<bool> given(columns.size(), false);
  for (const Likeness wanted : {Likeness::Whole, Likeness::Part}) {
    for (std::size_t i = 0; i < headings.size(); ++i) {
      const std::string heading = bare(headings[i]);
      for (std::size_t column = 0; column < columns.size() && !match[i]; ++column) {
        if (given[column] || likeness(heading, columns[column]) != wanted) continue;
        match[i] = column;
        given[column] = true;
      }
    }
  }
  return match;
}

ImportPreview previewImport(const site::Site& site, const Table& table, const ColumnMatch& match,
                            const std::vector<ImportColumn>& columns, const RowReader& read, std::string code) {
  ImportPreview preview{{}, {std::move(code), {}}};
  std::vector<Accepted> accepted;
  std::map<std::string, std::size_t> seen;
  for (std::size_t i = 1; i < table.size(); ++i) {
    if (isEmpty(table[i])) continue;
    ImportedRow row{i + 1};
    auto outcome = read(cellsOf(table[i], match, columns));
    if (auto* fault = std::get_if<RowFault>(&outcome)) {
      row.fate = RowFate::Refused;
      row.fault = std::move(*fault);
    } else {
      auto& change = std::get<RowChange>(outcome);
      const auto [first, isFirst] = seen.try_emplace(change.subject, row.number);
      if (!isFirst) {
        row.fate = RowFate::Refused;
        row.fault = RowFault{{"import.named_twice", "", {{"row", static_cast<double>(first->second)}}}, {}};
      } else if (change.change) {
        row.fate = change.adds ? RowFate::Adds : RowFate::Changes;
        accepted.push_back({preview.rows.size(), std::move(*change.change)});
      }
    }
    preview.rows.push_back(std::move(row));
  }
  sift(site, accepted, preview);
  return preview;
}

}  // namespace cordreach::io
