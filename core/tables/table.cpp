// SPDX-License-Identifier: GPL-3.0-or-later
// Reading a table file and refusing what has no source.
#include "tables/table.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <numeric>
#include <optional>

#include "base/contract.h"
#include "tables/csv_reader.h"

namespace cordreach::tables {
namespace {

std::optional<std::size_t> columnOf(const std::vector<std::string>& columns, std::string_view name) {
  const auto found = std::ranges::find(columns, name);
  if (found == columns.end()) return std::nullopt;
  return static_cast<std::size_t>(found - columns.begin());
}

std::optional<SourceStatus> statusOf(std::string_view word) {
  static constexpr std::array<std::pair<std::string_view, SourceStatus>, 5> kWords{
      {{"seen", SourceStatus::Seen},
       {"memory", SourceStatus::Memory},
       {"common", SourceStatus::Common},
       {"own", SourceStatus::Own},
       {"computed", SourceStatus::Computed}}};
  for (const auto& [text, status] : kWords) {
    if (text == word) return status;
  }
  return std::nullopt;
}

struct KeyColumns {
  std::size_t id, source, status;
};

std::optional<std::string_view> missingKeyColumn(const std::vector<std::string>& columns) {
  for (const std::string_view name : {"id", "source", "status"}) {
    if (!columnOf(columns, name)) return name;
  }
  return std::nullopt;
}

// The error code that a record deserves, or nothing when it stands.
std::optional<const char*> flawOf(const std::vector<std::string>& cells, const KeyColumns& keys, std::size_t width) {
  if (cells.size() != width) return "table.ragged_row";
  if (cells[keys.id].empty()) return "table.no_id";
  if (cells[keys.source].empty() || !statusOf(cells[keys.status])) return "table.no_source";
  return std::nullopt;
}

base::Error errorAt(const char* code, std::string_view name, std::size_t row) {
  return {code, std::string(name) + ":" + std::to_string(row), {}};
}

}  // namespace

const std::string& Row::text(std::string_view column) const {
  const auto position = columnOf(*m_columns, column);
  CORDREACH_EXPECTS(position.has_value());
  return m_cells[*position];
}

double Row::number(std::string_view column) const {
  const std::string& cell = text(column);
  double value = 0.0;
  const auto [end, code] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
  CORDREACH_EXPECTS(code == std::errc() && end == cell.data() + cell.size());
  return value;
}

base::Result<Table> Table::parse(std::string_view name, std::string_view csv) {
  auto records = readCsv(csv);
  if (!records || records->empty()) return errorAt("table.unreadable", name, 1);
  Table table;
  table.m_name = name;
  table.m_columns = std::make_unique<std::vector<std::string>>(std::move(records->front()));
  const auto& columns = *table.m_columns;
  if (const auto missing = missingKeyColumn(columns)) {
    auto error = errorAt("table.no_column", name, 1);
    error.arguments.push_back({"column", std::string(*missing)});
    return error;
  }
  const KeyColumns keys{*columnOf(columns, "id"), *columnOf(columns, "source"), *columnOf(columns, "status")};
  table.m_rows.reserve(records->size() - 1);
  for (std::size_t i = 1; i < records->size(); ++i) {
    auto& cells = (*records)[i];
    if (const auto flaw = flawOf(cells, keys, columns.size())) return errorAt(*flaw, name, i + 1);
    Row row;
    row.m_columns = table.m_columns.get();
    row.m_cells = std::move(cells);
    row.m_idColumn = keys.id;
    row.m_source = {row.m_cells[keys.source], *statusOf(row.m_cells[keys.status])};
    table.m_rows.push_back(std::move(row));
  }
  table.m_byId.resize(table.m_rows.size());
  std::iota(table.m_byId.begin(), table.m_byId.end(), std::size_t{0});
  const auto idOf = [&table](std::size_t i) -> const std::string& { return table.m_rows[i].id(); };
  std::ranges::stable_sort(table.m_byId, {}, idOf);
  const auto twice = std::ranges::adjacent_find(table.m_byId, {}, idOf);
  if (twice != table.m_byId.end()) {
    auto error = errorAt("table.duplicate_id", name, *std::next(twice) + 2);
    error.arguments.push_back({"id", idOf(*twice)});
    return error;
  }
  return table;
}

const Row* Table::find(std::string_view id) const {
  const auto idOf = [this](std::size_t i) -> std::string_view { return m_rows[i].id(); };
  const auto found = std::ranges::lower_bound(m_byId, id, {}, idOf);
  if (found == m_byId.end() || idOf(*found) != id) return nullptr;
  return &m_rows[*found];
}

const Row& Table::at(std::string_view id) const {
  const Row* row = find(id);
  CORDREACH_EXPECTS(row != nullptr);
  return *row;
}

}  // namespace cordreach::tables
