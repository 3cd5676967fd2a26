// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/table_import.h"

#include <gtest/gtest.h>

#include <cstdlib>

#include "support/small_site.h"

namespace cordreach::io {
namespace {

const std::vector<ImportColumn> kColumns{
    {"label", {"Outlet", "Label"}}, {"room", {"Room"}}, {"breaker", {"Breaker", "Circuit"}}};

TEST(MatchColumns, GoesByHeadingsWhateverTheirMarks) {
  EXPECT_EQ(matchColumns({"OUTLET", "Room:", "x"}, kColumns), (ColumnMatch{0, 1, std::nullopt}));
  EXPECT_EQ(matchColumns({"Room number", "Outlet no.", "Fed by breaker"}, kColumns), (ColumnMatch{1, 0, 2}));
  EXPECT_EQ(matchColumns({"breaker", "Circuit"}, kColumns), (ColumnMatch{2, std::nullopt}));
  EXPECT_EQ(matchColumns({"", "-"}, kColumns), (ColumnMatch{std::nullopt, std::nullopt}));
}

TEST(MatchColumns, PrefersAWholeHeadingToAPart) {
  EXPECT_EQ(matchColumns({"Room height", "Room"}, kColumns), (ColumnMatch{std::nullopt, 1}));
}

// Renames outlets of the small site: `label` is the outlet's id, `room` what it becomes.
class Import : public ::testing::Test {
 protected:
  [[nodiscard]] ImportPreview preview(const Table& table) const {
    const auto read = [this](const Cells& cells) -> std::variant<RowChange, RowFault> {
      const auto label = cells.find("label");
      if (label == cells.end() || label->second.empty()) return RowFault{{"import.no_name", "", {}}, "label"};
      const site::OutletId id(label->second);
      const site::Outlet* now = site.find<site::Outlet>(id);
      site::Outlet after = now != nullptr ? *now : site::Outlet{id};
      if (cells.count("room") != 0) after.room = cells.at("room");
      RowChange change{id.text(), {}, now == nullptr};
      if (now == nullptr) change.change = site::Change<site::Outlet>{std::nullopt, after};
      if (now != nullptr && !(*now == after)) change.change = site::Change<site::Outlet>{*now, after};
      return change;
    };
    return previewImport(site, table, matchColumns(table.front(), kColumns), kColumns, read, "outlet.import");
  }

  site::Site site = testing::SmallSite().circuit("1", 20, 60).circuit("2", 20, 60).circuit("3", 20, 60).site;
};

TEST_F(Import, TellsRowByRowWhatItWouldDo) {
  const auto result = preview({{"Outlet", "Room"}, {"1", "Lobby"}, {}, {"2", ""}, {"new", "Attic"}, {"", "x"}});
  ASSERT_EQ(result.rows.size(), 4U);
  EXPECT_EQ(result.rows[0].number, 2U);
  EXPECT_EQ(result.rows[0].fate, RowFate::Changes);
  EXPECT_EQ(result.rows[1].number, 4U);
  EXPECT_EQ(result.rows[1].fate, RowFate::Same);
  EXPECT_EQ(result.rows[2].fate, RowFate::Adds);
  EXPECT_EQ(result.rows[3].fate, RowFate::Refused);
  EXPECT_EQ(result.rows[3].fault->column, "label");
  site::Site after = site;
  ASSERT_TRUE(site::apply(result.edit, after).ok());
  EXPECT_EQ(after.at<site::Outlet>(site::OutletId("1")).room, "Lobby");
  EXPECT_EQ(after.at<site::Outlet>(site::OutletId("new")).room, "Attic");
  ASSERT_TRUE(site::apply(site::inverseOf(result.edit), after).ok());
  EXPECT_EQ(after, site);
}

TEST_F(Import, RefusesASecondRowAboutTheSame) {
  const auto result = preview({{"Outlet", "Room"}, {"1", "Lobby"}, {"1", "Attic"}});
  EXPECT_EQ(result.rows[1].fate, RowFate::Refused);
  EXPECT_EQ(result.rows[1].fault->error.code, "import.named_twice");
  EXPECT_EQ(result.edit.changes.size(), 1U);
}

// What the site can't hold is found row by row and takes no other with it.
TEST_F(Import, LeavesOutOnlyTheRowsThatTheSiteCantHold) {
  const std::string tooLong(100'000, 'x');
  Table table{{"Outlet", "Room"}};
  for (int i = 0; i < 40; ++i) table.push_back({"n" + std::to_string(i), i % 13 == 5 ? tooLong : "Attic"});
  const auto result = preview(table);
  int refused = 0;
  for (const ImportedRow& row : result.rows) {
    if (row.fate != RowFate::Refused) continue;
    ++refused;
    EXPECT_EQ((row.number - 2) % 13, 5U);
    EXPECT_EQ(row.fault->error.code, "site.text_too_long");
  }
  EXPECT_EQ(refused, 3);
  EXPECT_EQ(result.edit.changes.size(), 37U);
  site::Site after = site;
  EXPECT_TRUE(site::apply(result.edit, after).ok());
}

}  // namespace
}  // namespace cordreach::io
