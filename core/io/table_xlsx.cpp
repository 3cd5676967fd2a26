// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/table_xlsx.h"

#include <unistd.h>
#include <xlsxwriter.h>

#include <cerrno>
#include <cstdlib>
#include <filesystem>
#include <string_view>
#include <system_error>

#include "io/atomic_file.h"

namespace cordreach::io {
namespace {

constexpr std::size_t kMostFileBytes = 256U * 1024U * 1024U;
constexpr std::size_t kLongestCell = 32'767;  // letters of a cell, by the format
constexpr std::size_t kLongestName = 31;

base::Error notWritten(std::string reason) { return {"table_file.not_written", "", {{"reason", std::move(reason)}}}; }

// The library writes files only: one of our own, gone when this goes.
class WorkFile {
 public:
  WorkFile() {
    std::string name = (std::filesystem::temp_directory_path() / "cordreach-table-XXXXXX").string();
    const int file = mkstemp(name.data());
    if (file < 0) return;
    close(file);
    m_path = name;
  }
  ~WorkFile() {
    std::error_code ignored;
    if (!m_path.empty()) std::filesystem::remove(m_path, ignored);
  }
  WorkFile(const WorkFile&) = delete;
  WorkFile& operator=(const WorkFile&) = delete;
  [[nodiscard]] const std::string& path() const { return m_path; }

 private:
  std::string m_path;
};

// At most `bytes` of it, not ending within a letter.
std::string cut(std::string_view text, std::size_t bytes) {
  if (text.size() <= bytes) return std::string(text);
  while (bytes > 0 && (static_cast<unsigned char>(text[bytes]) & 0xC0U) == 0x80U) --bytes;
  return std::string(text.substr(0, bytes));
}

std::string sheetNameFrom(const std::string& name) {
  std::string plain;
  for (const char c : name) plain += std::string_view("[]:*?/\\'").find(c) == std::string_view::npos ? c : ' ';
  return cut(plain, kLongestName);
}

}  // namespace

base::Result<std::string> tableXlsx(const Table& table, const std::string& sheetName) {
  const WorkFile file;
  if (file.path().empty()) return notWritten(std::generic_category().message(errno));
  lxw_workbook* book = workbook_new(file.path().c_str());
  if (book == nullptr) return notWritten({});
  lxw_worksheet* sheet = workbook_add_worksheet(book, sheetNameFrom(sheetName).c_str());
  lxw_format* head = workbook_add_format(book);
  format_set_bold(head);
  for (std::size_t row = 0; row < table.size(); ++row) {
    for (std::size_t column = 0; column < table[row].size(); ++column) {
      const std::string cell = cut(inertCell(table[row][column]), kLongestCell);
      worksheet_write_string(sheet, static_cast<lxw_row_t>(row), static_cast<lxw_col_t>(column), cell.c_str(),
                             row == 0 ? head : nullptr);
    }
  }
  worksheet_freeze_panes(sheet, 1, 0);
  const lxw_error fault = workbook_close(book);  // frees the book too
  if (fault != LXW_NO_ERROR) return notWritten(lxw_strerror(fault));
  return readWholeFile(file.path(), kMostFileBytes);
}

}  // namespace cordreach::io
