// SPDX-License-Identifier: GPL-3.0-or-later
// Writes one table into a folder twice, as table.xlsx and as table.csv: cells that look like formulas, numbers and
// dates, that break lines, that other alphabets are written in.
#include <filesystem>
#include <iostream>

#include "io/atomic_file.h"
#include "io/table_csv.h"
#include "io/table_xlsx.h"

namespace {

using cordreach::io::Table;

Table sampleTable() {
  Table table{{"Number", "Breaker", "Note"}};
  for (const char* cell : {"=1+1",
                           "=HYPERLINK(\"http://example.invalid\",\"press\")",
                           "+2",
                           "-3",
                           "@SUM(A1:A9)",
                           "\t=4",
                           "=cmd|'/c x'!A1",
                           "007",
                           "1-02",
                           "1E5",
                           "3/4",
                           "12:30",
                           "0.10",
                           "1,000",
                           "TRUE",
                           "#N/A",
                           "#REF!",
                           "?",
                           " leading",
                           "trailing ",
                           "two\nlines",
                           "\"quoted\"",
                           "semi;colon",
                           "comma,comma",
                           "a'b",
                           "'apostrophe",
                           "ñandú Ω 75 ft",
                           "日本",
                           "<b>bold</b>",
                           "&amp;"}) {
    table.push_back({std::to_string(table.size()), cell, std::string("before ") + cell});
  }
  table.push_back({"", "", "only the last"});
  table.push_back({std::string(3000, 'x'), "long", ""});
  return table;
}

bool wrote(const std::filesystem::path& path, const std::string& bytes) {
  return cordreach::io::replaceFile(path, bytes).ok();
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 2) {
    std::cerr << "export_table FOLDER\n";
    return 2;
  }
  const std::filesystem::path folder = argv[1];
  const auto bytes = cordreach::io::tableXlsx(sampleTable(), "Outlets");
  const bool done = bytes.ok() && wrote(folder / "table.xlsx", bytes.value()) &&
                    wrote(folder / "table.csv", cordreach::io::writeTableCsv(sampleTable()));
  return done ? 0 : 1;
}
