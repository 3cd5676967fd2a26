// SPDX-License-Identifier: GPL-3.0-or-later
// The file's outside, and what another program reads in it.
#include "io/table_xlsx.h"

#include <gtest/gtest.h>

#include <unistd.h>

#include <cstdlib>
#include <filesystem>

#include "io/atomic_file.h"
#include "io/table_csv.h"

namespace cordreach::io {
namespace {

namespace fs = std::filesystem;

const Table kTable{{"Name", "Says"}, {"1-13", "=1+1"}, {"<b>1-14</b>", "two\nlines, ñ \"quoted\""}, {"", "@x"}};

TEST(TableXlsx, IsAZipOfOneSheet) {
  const auto bytes = tableXlsx(kTable, "Outlets: all/every [one] of the building's");
  ASSERT_TRUE(bytes.ok());
  EXPECT_EQ(bytes.value().substr(0, 4), "PK\x03\x04");
  EXPECT_NE(bytes.value().find("xl/worksheets/sheet1.xml"), std::string::npos);
  EXPECT_EQ(bytes.value().find("sheet2.xml"), std::string::npos);
}

// Python's zip and XML readers stand for another program: every cell is a text, none a formula.
TEST(TableXlsx, IsReadByAnotherProgramAsItWasWritten) {
  const fs::path folder = fs::temp_directory_path() / ("cordreach-xlsx-" + std::to_string(::getpid()));
  fs::create_directories(folder);
  ASSERT_TRUE(replaceFile(folder / "table.xlsx", tableXlsx(kTable, "Outlets").value()).ok());
  const std::string command = "python3 tests/core/io/xlsx_to_csv.py '" + (folder / "table.xlsx").string() + "' > '" +
                              (folder / "table.csv").string() + "'";
  ASSERT_EQ(std::system(command.c_str()), 0);
  const auto csv = readWholeFile(folder / "table.csv", 1 << 20);
  ASSERT_TRUE(csv.ok());
  EXPECT_EQ(readTableCsv(csv.value()).value(), kTable);
  EXPECT_NE(csv.value().find("'=1+1"), std::string::npos);
  fs::remove_all(folder);
}

}  // namespace
}  // namespace cordreach::io
