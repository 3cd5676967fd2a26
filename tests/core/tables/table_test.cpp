// SPDX-License-Identifier: GPL-3.0-or-later
// What a table file must have to load, and that each compiled-in one has it.
#include "tables/table.h"

#include <gtest/gtest.h>

#include "base/contract.h"
#include "tables/embedded.h"

namespace cordreach::tables {
namespace {

std::string codeOf(std::string_view csv) {
  const auto parsed = Table::parse("t", csv);
  return parsed.ok() ? "" : parsed.error().code + "@" + parsed.error().place;
}

TEST(Table, KeepsRowsInOrderWithTheirSource) {
  const auto parsed = Table::parse("t", "id,size,source,status\nb,1.5,\"A, B\",seen\na,2,C,own\n");
  ASSERT_TRUE(parsed.ok());
  const Table& t = parsed.value();
  EXPECT_EQ(t.name(), "t");
  ASSERT_EQ(t.rows().size(), 2u);
  EXPECT_EQ(t.rows()[0].id(), "b");
  EXPECT_EQ(t.rows()[0].source(), (Source{"A, B", SourceStatus::Seen}));
  EXPECT_EQ(t.at("a").source().status, SourceStatus::Own);
  EXPECT_DOUBLE_EQ(t.at("b").number("size"), 1.5);
  EXPECT_EQ(t.find("c"), nullptr);
}

TEST(Table, StaysUsableAfterAMove) {
  auto parsed = Table::parse("t", "id,v,source,status\nx,1,S,seen\n");
  ASSERT_TRUE(parsed.ok());
  const Table moved = std::move(parsed).value();
  EXPECT_DOUBLE_EQ(moved.at("x").number("v"), 1.0);
}

TEST(Table, RefusesAFileWithoutItsKeyColumns) {
  EXPECT_EQ(codeOf("key,source,status\na,S,seen\n"), "table.no_column@t:1");
  EXPECT_EQ(codeOf("id,status\na,seen\n"), "table.no_column@t:1");
  EXPECT_EQ(codeOf("id,source\na,S\n"), "table.no_column@t:1");
}

TEST(Table, RefusesARowWithoutIdSourceOrStatus) {
  EXPECT_EQ(codeOf("id,source,status\na,S,seen\n,S,seen\n"), "table.no_id@t:3");
  EXPECT_EQ(codeOf("id,source,status\na,,seen\n"), "table.no_source@t:2");
  EXPECT_EQ(codeOf("id,source,status\na,S,\n"), "table.no_source@t:2");
  EXPECT_EQ(codeOf("id,source,status\na,S,heard\n"), "table.no_source@t:2");
}

TEST(Table, RefusesTheSameIdTwice) {
  EXPECT_EQ(codeOf("id,source,status\na,S,seen\nb,S,seen\na,S,seen\n"), "table.duplicate_id@t:4");
}

TEST(Table, RefusesRaggedRows) {
  EXPECT_EQ(codeOf("id,source,status\na,S\n"), "table.ragged_row@t:2");
  EXPECT_EQ(codeOf("id,source,status\na,S,seen,more\n"), "table.ragged_row@t:2");
}

TEST(Table, RefusesBrokenQuotingAndNothingAtAll) {
  EXPECT_EQ(codeOf(""), "table.unreadable@t:1");
  EXPECT_EQ(codeOf("id,source,status\na,\"S,seen\n"), "table.unreadable@t:1");
}

TEST(Table, TreatsAWrongColumnOrCellAsOurOwnBug) {
  const auto parsed = Table::parse("t", "id,v,source,status\nx,wide,S,seen\n");
  ASSERT_TRUE(parsed.ok());
  EXPECT_THROW(static_cast<void>(parsed.value().at("x").text("w")), base::ContractFailure);
  EXPECT_THROW(static_cast<void>(parsed.value().at("x").number("v")), base::ContractFailure);
  EXPECT_THROW(static_cast<void>(parsed.value().at("y")), base::ContractFailure);
  EXPECT_THROW(static_cast<void>(table("no such table")), base::ContractFailure);
}

TEST(CompiledInTables, EachLoads) {
  ASSERT_FALSE(embeddedTables().empty());
  for (const auto& [name, csv] : embeddedTables()) {
    const auto parsed = Table::parse(name, csv);
    ASSERT_TRUE(parsed.ok()) << parsed.error().code << " at " << parsed.error().place;
    EXPECT_FALSE(parsed.value().rows().empty()) << name;
    EXPECT_EQ(&table(name), &table(name));
  }
}

}  // namespace
}  // namespace cordreach::tables
