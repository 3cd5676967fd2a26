// SPDX-License-Identifier: GPL-3.0-or-later
// A published table as it stands in resources/tables/<name>.csv: rows by id, each with its source and status.
// A file without the columns id, source and status, or a row that leaves one of them empty, does not load.
#pragma once

#include <cstddef>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "tables/source.h"

namespace cordreach::tables {

class Table;

class Row {
 public:
  [[nodiscard]] const std::string& id() const { return m_cells[m_idColumn]; }
  [[nodiscard]] const Source& source() const { return m_source; }
  // The cell as written; the column must exist.
  [[nodiscard]] const std::string& text(std::string_view column) const;
  // The cell as a number; the column must exist and its cell must hold one (checked by a test over every table).
  [[nodiscard]] double number(std::string_view column) const;
  [[nodiscard]] bool empty(std::string_view column) const { return text(column).empty(); }

 private:
  friend class Table;
  const std::vector<std::string>* m_columns = nullptr;
  std::vector<std::string> m_cells;
  std::size_t m_idColumn = 0;
  Source m_source;
};

class Table {
 public:
  // Errors: table.no_column, table.no_id, table.no_source, table.duplicate_id, table.ragged_row, table.unreadable;
  // their place is `name:row`, the header being row 1. A status that is none of the five is no source either.
  [[nodiscard]] static base::Result<Table> parse(std::string_view name, std::string_view csv);

  Table(Table&&) = default;
  Table& operator=(Table&&) = default;
  Table(const Table&) = delete;
  Table& operator=(const Table&) = delete;

  [[nodiscard]] const std::string& name() const { return m_name; }
  [[nodiscard]] const std::vector<Row>& rows() const { return m_rows; }
  // Binary search by id.
  [[nodiscard]] const Row* find(std::string_view id) const;
  // The row of that id, which must exist.
  [[nodiscard]] const Row& at(std::string_view id) const;

 private:
  Table() = default;
  std::string m_name;
  std::unique_ptr<std::vector<std::string>> m_columns;
  std::vector<Row> m_rows;
  std::vector<std::size_t> m_byId;  // positions in m_rows, ordered by id
};

// The table compiled in under that name; read once, on first use. Asking for one that is not there is our own bug.
[[nodiscard]] const Table& table(std::string_view name);

}  // namespace cordreach::tables
