// SPDX-License-Identifier: GPL-3.0-or-later
// Widths, wrapping and tables on a screen of fixed columns.
#include "text/columns.h"

#include <gtest/gtest.h>

#include <sstream>

namespace cordreach::text {
namespace {

std::vector<std::string> linesOf(const std::string& text) {
  std::istringstream stream(text);
  std::vector<std::string> lines;
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  return lines;
}

TEST(Columns, CountsWhatIsSeenNotBytes) {
  EXPECT_EQ(columnsOf("abc"), 3U);
  EXPECT_EQ(columnsOf("51\u202F°C"), 5U);
  EXPECT_EQ(columnsOf("e\u0301"), 1U);
  EXPECT_EQ(columnsOf("\u6F22"), 2U);
  EXPECT_EQ(columnsOf("\xFF\xC3"), 2U);
}

TEST(Columns, CutsWithAnEllipsis) {
  EXPECT_EQ(cutTo("corridor east", 8), "corrido\u2026");
  EXPECT_EQ(cutTo("corridor", 8), "corridor");
  EXPECT_EQ(cutTo("corridor", 0), "");
}

TEST(Columns, FillsLinesUpToTheWidthAndIndents) {
  const auto lines = linesOf(wrapped("one two three four", {"- ", "  "}, 10));
  EXPECT_EQ(lines, (std::vector<std::string>{"- one two", "  three", "  four"}));
}

TEST(Columns, NeverBreaksANumberFromItsUnit) {
  const auto lines = linesOf(wrapped("it draws 16\u202FA now", {}, 11));
  EXPECT_EQ(lines, (std::vector<std::string>{"it draws", "16\u202FA now"}));
}

TEST(Columns, BreaksAWordLongerThanALine) {
  for (const std::string& line : linesOf(wrapped("x " + std::string(50, 'y') + " z", {}, 20))) {
    EXPECT_LE(columnsOf(line), 20U);
  }
  EXPECT_EQ(linesOf(wrapped(std::string(45, 'y'), {}, 20)).size(), 3U);
}

TEST(Columns, LinesUpATableAndCutsNamesBeforeFigures) {
  const std::string table = tableText({{"Name"}, {"Amps", Align::Right}},
                                      {{"a very long name of a circuit", "14.6 A"}, {"short", "100.0 A"}}, 24);
  EXPECT_EQ(table,
            "Name                Amps\n"
            "a very long na\u2026   14.6 A\n"
            "short            100.0 A\n");
}

TEST(Columns, ShowsControlCharactersAndBrokenBytesAsQuestionMarks) {
  EXPECT_EQ(forConsole("a\x1b[31mb\x07 16\u202FA \xFF\n"), "a?[31mb? 16 A ?\n");
}

}  // namespace
}  // namespace cordreach::text
