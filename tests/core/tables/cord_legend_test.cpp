// SPDX-License-Identifier: GPL-3.0-or-later
// Jacket print, whole, reordered and worn.
#include "tables/cord_legend.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <chrono>
#include <cmath>

namespace cordreach::tables {
namespace {

// A legend in one line: type, size, conductors, °C, V, with `-` for unknown.
std::string shortOf(const CordLegend& legend) {
  const auto number = [](double value) { return std::to_string(std::lround(value)); };
  return legend.type.value_or("-") + " " + (legend.size ? legend.size->name() : "-") + " " +
         (legend.conductors ? std::to_string(*legend.conductors) : "-") + " " +
         (legend.rating ? number(legend.rating->celsius()) : "-") + " " +
         (legend.voltage ? number(legend.voltage->in(units::volt)) : "-");
}

std::string read(std::string_view text) { return shortOf(readLegend(text)); }

using Pieces = std::vector<std::string>;

TEST(CordLegend, ReadsOrdinaryPrint) {
  for (const auto text :
       {"SJTW 14/3 60C 300V", "sjtw 14/3 60\u00B0c 300v", "14/3 SJTW 300V 60C", "300 V 60 C 3/C 14 AWG SJTW",
        "(UL) E12345 TYPE SJTW 14AWGx3C 60\u00B0C 300V VW-1 FT2 c(UL)", "SJTW 14-3 60 DEG C 300 VOLTS",
        "SJTW14/3 60C 300V", "SJTW #14 3 CONDUCTORS 60C 300V", "SJTW 3X14AWG 60C,300V", "AWG 14 3C SJTW 140F 300VAC",
        "SJTW 14 AWG/3 60C 300V", "SJTW 14 ga 3 cond. 60C 300V"}) {
    const auto legend = readLegend(text);
    EXPECT_EQ(shortOf(legend), "SJTW 14 AWG 3 60 300") << text;
    EXPECT_EQ(legend.unread, Pieces{}) << text;
    EXPECT_EQ(legend.family, CordFamily::Hard);
  }
}

TEST(CordLegend, ReadsOtherTypes) {
  EXPECT_EQ(read("SPT-2 18/2 300V 105C VW-1"), "SPT-2 18 AWG 2 105 300");
  EXPECT_EQ(read("SPT 2 16/2"), "SPT-2 16 AWG 2 - -");
  EXPECT_EQ(read("SVT 18AWGX2C 105\u00B0C 300V"), "SVT 18 AWG 2 105 300");
  EXPECT_EQ(read("SOOW 10/4 90C 600V"), "SOOW 10 AWG 4 90 600");
  EXPECT_EQ(read("SJEOW 12/3 -50C TO 105C 300V"), "SJEOW 12 AWG 3 105 300");
  EXPECT_EQ(read("S 2/4"), "S 2 AWG 4 - -");
  EXPECT_EQ(read("SJOOW 105C DRY 60C WET 12/3"), "SJOOW 12 AWG 3 60 -");
}

TEST(CordLegend, ReadsMetricPrint) {
  for (const auto text : {"H05VV-F 3G1.5 300/500V", "H05VV-F 3x1,5mm\u00B2 300/500 V", "HO5VV-F 3*1.5MM2 500V",
                          "h05vv-f 3 \u00D7 1.5 mm2 300/500V", "300/500V 3G1,5 H05VVF"}) {
    EXPECT_EQ(read(text), "H05VV-F 1.5 mm\u00B2 3 - 500") << text;
  }
  EXPECT_EQ(read("3x2.5mm2"), "- 2.5 mm\u00B2 3 - -");
  EXPECT_EQ(read("SJTW 3X16AWG(1.31mm2)"), "SJTW 16 AWG 3 - -");
}

TEST(CordLegend, LeavesMissingPartsUnknown) {
  EXPECT_EQ(read(""), "- - - - -");
  EXPECT_EQ(read("16/3"), "- 16 AWG 3 - -");
  EXPECT_EQ(read("SJT"), "SJT - - - -");
  EXPECT_EQ(read("105C"), "- - - 105 -");
}

TEST(CordLegend, KeepsWhatItCannotRead) {
  EXPECT_EQ(readLegend("SJTW 16/3 50ft banana").unread, (Pieces{"50FT", "BANANA"}));
  EXPECT_EQ(readLegend("SJTW 14").unread, Pieces{"14"});
  const auto either = readLegend("3X16");
  EXPECT_EQ(either.conductors, 3);
  EXPECT_FALSE(either.size);
  EXPECT_EQ(either.unread, Pieces{"3X16"});
}

TEST(CordLegend, ReadsWornLettersOnlyAsFarAsTheyGo) {
  EXPECT_EQ(read("?JTW 14/3"), "SJTW 14 AWG 3 - -");
  EXPECT_EQ(read("SVT? 18/2"), "SVTO 18 AWG 2 - -");
  const auto worn = readLegend("SJ?W 14/3 60C");
  EXPECT_FALSE(worn.type);
  EXPECT_EQ(worn.possibleTypes, (Pieces{"SJOW", "SJEW", "SJTW"}));
  EXPECT_EQ(worn.family, CordFamily::Hard);
  EXPECT_EQ(readLegend("S?OW").family, std::nullopt);  // SJOW is hard, STOW and SEOW are extra hard
  EXPECT_TRUE(readLegend("??? S? *").possibleTypes.empty());
  const auto gauge = readLegend("SJTW 1?/3");
  EXPECT_FALSE(gauge.size);
  EXPECT_EQ(gauge.conductors, 3);
  EXPECT_EQ(gauge.unread, Pieces{"1?/3"});
  EXPECT_EQ(shortOf(readLegend("SJTW 14/_ ?00V")), "SJTW 14 AWG - - -");
}

TEST(CordLegend, PiecesTogetherRepeatedPrint) {
  EXPECT_EQ(read("SJ?W 1?/3 60C   SJT? 14/3 3?0V"), "SJTW 14 AWG 3 60 -");
}

TEST(CordLegend, LeavesContradictionsUnknown) {
  EXPECT_EQ(read("SJTW 14/3 16/3"), "SJTW - 3 - -");
  EXPECT_EQ(read("SJTW SPT-2 14/3 14/2"), "- 14 AWG - - -");
}

TEST(CordLegend, DoesNotTakeADateOrAFileNumberForASize) {
  EXPECT_EQ(read("E14312 2024/05/12 05/12 11/12"), "- - - - -");
}

TEST(CordLegend, IsQuickOnAnything) {
  const auto begin = std::chrono::steady_clock::now();
  for (const std::string& unit :
       {std::string("S*"), std::string("*?"), std::string("\xFF\xC0"), std::string("1/"), std::string(" "),
        std::string("SJTW 14/3 "), std::string("9"), std::string("S*J*T*W* ")}) {
    std::string text;
    while (text.size() < 1'000'000) text += unit;
    EXPECT_LE(readLegend(text).unread.size(), 40u);
  }
  EXPECT_LT(std::chrono::steady_clock::now() - begin, std::chrono::seconds(60));
}

RC_GTEST_PROP(CordLegend, SurvivesAnyBytes, (const std::string& text)) {
  const auto legend = readLegend(text);
  // Outside the macro: inside it, || evaluates both sides.
  const bool known = !legend.type || cordType(*legend.type) != nullptr;
  RC_ASSERT(known);
  RC_ASSERT(legend.unread.size() <= 40u);
}

RC_GTEST_PROP(CordLegend, ReadsPiecesInAnyOrder, ()) {
  std::vector<std::string> pieces{"SJEOOW", "12/3", "90C", "300V", "(UL)", "VW-1"};
  for (auto& piece : pieces) std::swap(piece, pieces[*rc::gen::inRange<std::size_t>(0, pieces.size())]);
  std::string text;
  for (const auto& piece : pieces) text += piece + " ";
  RC_ASSERT(read(text) == "SJEOOW 12 AWG 3 90 300");
}

}  // namespace
}  // namespace cordreach::tables
