// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/table_csv.h"

#include <gtest/gtest.h>

#include "io/text_encoding.h"

namespace cordreach::io {
namespace {

using namespace std::string_literals;

std::string asUtf16(std::u16string_view text, bool little, bool mark) {
  std::string bytes;
  const auto put = [&](char16_t unit) {
    const char low = static_cast<char>(unit & 0xFF);
    const char high = static_cast<char>(unit >> 8);
    bytes += little ? low : high;
    bytes += little ? high : low;
  };
  if (mark) put(0xFEFF);
  for (const char16_t unit : text) put(unit);
  return bytes;
}

TEST(TableCsv, ReadsEveryEncodingThatSpreadsheetsWrite) {
  const Table wanted{{"Name", "Room"}, {"Café", "101"}};
  EXPECT_EQ(readTableCsv("Name,Room\nCafé,101\n").value(), wanted);
  EXPECT_EQ(readTableCsv("\xEF\xBB\xBFName,Room\r\nCafé,101\r\n").value(), wanted);
  EXPECT_EQ(readTableCsv("Name,Room\rCaf\xE9,101").value(), wanted);  // Latin-1, line ends of an old machine
  for (const bool little : {true, false}) {
    for (const bool mark : {true, false}) {
      EXPECT_EQ(readTableCsv(asUtf16(u"Name,Room\nCafé,101\n", little, mark)).value(), wanted) << little << mark;
    }
  }
}

TEST(TableCsv, ReadsLettersBeyondTheFirstPlane) {
  EXPECT_EQ(toUtf8(asUtf16(u"\U0001F50C", true, true)).value(), "\U0001F50C");
  EXPECT_EQ(toUtf8("\x80 5\x96"
                   "6")
                .value(),
            "€ 5–6");  // of the Western European page
}

TEST(TableCsv, SaysWhatItCantRead) {
  const auto codeOf = [](std::string_view bytes) {
    const auto read = readTableCsv(bytes);
    return read.ok() ? "ok"s : read.error().code;
  };
  EXPECT_EQ(codeOf("\x89PNG\r\n\x1A\n\0\0\0\rIHDR"s), "csv.unknown_encoding");
  EXPECT_EQ(codeOf("a\0b"s), "csv.unknown_encoding");
  EXPECT_EQ(codeOf("\xFF\xFE"
                   "a"),
            "csv.unknown_encoding");                                       // half a letter
  EXPECT_EQ(codeOf("\xFF\xFE\x00\xD8\x41\x00"s), "csv.unknown_encoding");  // half a pair
  EXPECT_EQ(codeOf("caf\x8D"), "csv.unknown_encoding");                    // a letter of no page
  EXPECT_EQ(codeOf(""), "csv.empty");
  EXPECT_EQ(codeOf("\n\n\n"), "csv.empty");
  EXPECT_EQ(codeOf(std::string(kMostTableMb * 1024 * 1024 + 1, 'a')), "csv.too_large");
  EXPECT_EQ(codeOf(std::string(kMostTableRows + 1, '\n') + "a"), "csv.too_many_rows");
  EXPECT_EQ(codeOf("a\n" + std::string(kMostTableColumns, ',') + "b"), "csv.too_many_columns");
}

TEST(TableCsv, NamesTheRowWhoseQuotesAreWrong) {
  const auto rowOf = [](std::string_view bytes) {
    const auto read = readTableCsv(bytes);
    return read.ok() || read.error().code != "csv.bad_quotes" ? -1.0
                                                              : std::get<double>(read.error().arguments[0].value);
  };
  EXPECT_EQ(rowOf("a,b\nc,\"d\ne,f\n"), 2);  // never closed
  EXPECT_EQ(rowOf("a,b\n\nc,d\"e\n"), 3);    // within a cell; the empty row counts
  EXPECT_EQ(rowOf("a,b\nc,\"d\"e\"\n"), 2);  // not doubled
  EXPECT_EQ(rowOf("a,b\nc,\"d \"\"e\"\"\"\n"), -1);
}

TEST(TableCsv, FindsTheMarkBetweenCells) {
  const Table wanted{{"a", "b,c"}, {"1", "2"}};
  EXPECT_EQ(readTableCsv("a;\"b,c\"\n1;2").value(), wanted);
  EXPECT_EQ(readTableCsv("a\tb,c\n1\t2").value()[1], (TableRow{"1", "2"}));
  EXPECT_EQ(readTableCsv("a,\"b,c\"\n1,2").value(), wanted);
}

TEST(TableCsv, GivesBackWhatItWrote) {
  const Table table{{"plain", "", "a,b"},
                    {"line\nend", "quote \" in it", "tab\there"},
                    {"=1+1", "+x", "@y"},
                    {"-5", "\tz", "'=not ours"},
                    {"<b>bold</b>", "ñ", "'plain"}};
  EXPECT_EQ(readTableCsv(writeTableCsv(table)).value(), table);
  EXPECT_EQ(readTableTsv(writeTableTsv({{"a", "5'6\""}, {"b\tc", "=1"}})).value(),
            (Table{{"a", "5'6\""}, {"b\tc", "=1"}}));
}

TEST(TableCsv, LeavesNoCellThatASpreadsheetWouldRun) {
  for (const std::string& cell : {"=1+1"s, "+1"s, "-1"s, "@SUM(A1)"s, "\t=1"s, "\r=1"s}) {
    EXPECT_EQ(inertCell(cell), "'" + cell);
    EXPECT_EQ(plainCell(inertCell(cell)), cell);
    EXPECT_NE(writeTableCsv({{cell}}).find("\"'"), std::string::npos);
    EXPECT_NE(writeTableTsv({{cell}}).find('\''), std::string::npos);
  }
  EXPECT_EQ(inertCell("5 = five"), "5 = five");
}

TEST(TableTsv, SaysThatAQuoteIsNeverClosed) {
  EXPECT_EQ(readTableTsv("a\t\"b\nc").error().code, "csv.bad_quotes");
  EXPECT_TRUE(readTableTsv("a\t\"b\"\nc").ok());
}

TEST(TableTsv, TakesFeetAndInchesAsTheyAreCopied) {
  EXPECT_EQ(readTableTsv("1-13\t5'6\"\n1-14\t\"two\nlines\"\n").value(),
            (Table{{"1-13", "5'6\""}, {"1-14", "two\nlines"}}));
}

}  // namespace
}  // namespace cordreach::io
