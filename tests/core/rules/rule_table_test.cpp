// SPDX-License-Identifier: GPL-3.0-or-later
// The rule table, its order, and the page that explains it.
#include "rules/rule_table.h"

#include <gtest/gtest.h>

#include <fstream>
#include <map>
#include <regex>

#include "rules/severity.h"
#include "tables/code_limits.h"
#include "tiny_site.h"

namespace cordreach::rules {
namespace {

// Rows of the page's table: | `code` | SEVERITY | ...
std::map<std::string, std::string> rowsOfThePage() {
  std::ifstream file("docs/severity.md");
  std::map<std::string, std::string> rows;
  const std::regex row("^\\| `([a-z0-9_.]+)` \\| ([A-Z]+) \\|.*");
  for (std::string line; std::getline(file, line);) {
    std::smatch match;
    if (std::regex_match(line, match, row)) rows[match[1]] = match[2];
  }
  return rows;
}

std::string upper(std::string_view text) {
  std::string result;
  for (const char c : text) result += static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
  return result;
}

TEST(RuleTable, SaysTheSameAsTheSeverityPage) {
  std::map<std::string, std::string> table;
  for (const Rule& rule : ruleTable()) table[rule.code] = upper(nameOf(rule.severity));
  EXPECT_EQ(rowsOfThePage(), table);
}

TEST(RuleTable, RunsFromTheWorstDown) {
  for (std::size_t i = 1; i < ruleTable().size(); ++i) {
    EXPECT_LE(ruleTable()[i].severity, ruleTable()[i - 1].severity) << ruleTable()[i].code;
  }
}

TEST(RuleTable, HasTheLimitsOfTheCodeTable) {
  EXPECT_DOUBLE_EQ(ruleOf("drop.branch").limitFraction(), tables::branchDropAdvisory().value);
  EXPECT_DOUBLE_EQ(ruleOf("drop.total").limitFraction(), tables::totalDropAdvisory().value);
  EXPECT_DOUBLE_EQ(ruleOf("code.eighty_percent").limitFraction(), tables::portableShare().value);
  EXPECT_DOUBLE_EQ(ruleOf("code.eighty_percent").limitFraction(), tables::continuousShare().value);
}

TEST(Judge, FindsNothingAboutASoundHookup) {
  const TinySite tiny;
  for (const Finding& finding : tiny.judged()) ADD_FAILURE() << finding.code;
  EXPECT_EQ(tiny.verdict(), Severity::Ok);
}

TEST(Judge, ListsTheWorstFirstAndACauseBeforeItsEffects) {
  TinySite tiny;
  site::Cord cord = tiny.cord();
  cord.tag = site::known(13.0 * ampere);
  tiny.put(cord);
  tiny.given().voltage = sharp(101.6 * volt);
  tiny.extensionGiven().conductor = sharp(units::Temperature::fromCelsius(61.0));
  tiny.given().branchDrop = 4.0 * volt;
  const auto all = tiny.judged();
  std::vector<std::string> codes;
  for (const Finding& finding : all) codes.push_back(finding.code);
  EXPECT_EQ(codes, (std::vector<std::string>{"cord.over_tag", "cord.conductor_over_rating", "machine.voltage",
                                             "drop.branch"}));
  for (const Finding& finding : all) EXPECT_FALSE(finding.why.empty()) << finding.code;
}

TEST(Judge, LeavesOutWhatIsSwitchedOff) {
  TinySite tiny;
  tiny.given().stalledCold = true;
  site::Hookup hookup = tiny.hookup();
  hookup.off = true;
  tiny.put(hookup);
  EXPECT_FALSE(tiny.has("machine.stall"));
}

}  // namespace
}  // namespace cordreach::rules
