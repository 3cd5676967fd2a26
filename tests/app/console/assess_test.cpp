// SPDX-License-Identifier: GPL-3.0-or-later
// `assess` and `site`: the contract of the JSON, exits, several sites, the page.
#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

#include "app/console/support.h"
#include "text/columns.h"
#include "text/pseudo_language.h"

namespace cordreach::console {
namespace {

using Json = nlohmann::ordered_json;
using Words = std::vector<std::string>;

const std::string kDemo = "resources/demo/building.json";

const Ran& demo() {
  static const Ran result = ran({"assess", kDemo, "--json"});
  return result;
}

Words keysOf(const Json& object) {
  Words keys;
  for (const auto& item : object.items()) keys.push_back(item.key());
  return keys;
}

// Every number but those of a known kind has its low and high beside it.
void expectBand(const Json& object, const std::string& stem, const std::string& unit) {
  const std::string key = stem + "_" + unit;
  ASSERT_TRUE(object.contains(key)) << key;
  ASSERT_TRUE(object.contains(stem + "_low_" + unit)) << key;
  ASSERT_TRUE(object.contains(stem + "_high_" + unit)) << key;
  if (object[key].is_null()) return;
  EXPECT_LE(object[stem + "_low_" + unit], object[key].get<double>() + 1e-6) << key;
  EXPECT_GE(object[stem + "_high_" + unit], object[key].get<double>() - 1e-6) << key;
}

TEST(Assess, IsOneLineAndExitsOneOnTheDemo) {
  EXPECT_EQ(demo().exit, 1);
  EXPECT_EQ(demo().error, "");
  EXPECT_EQ(demo().out.find('\n'), demo().out.size() - 1);
  EXPECT_EQ(keysOf(Json::parse(demo().out)), (Words{"site", "circuits", "hookups", "outlets", "findings"}));
  EXPECT_EQ(Json::parse(demo().out)["site"], kDemo);
}

TEST(Assess, CircuitsHoldTheContract) {
  const Json answer = Json::parse(demo().out);
  for (const Json& circuit : answer["circuits"]) {
    for (const char* key : {"id", "name", "rating_a", "trip"}) EXPECT_TRUE(circuit.contains(key)) << key;
    expectBand(circuit, "current", "a");
    expectBand(circuit, "margin", "a");
    EXPECT_NEAR(circuit["margin_a"], circuit["rating_a"].get<double>() - circuit["current_a"].get<double>(), 1e-3);
    EXPECT_EQ(keysOf(circuit["trip"]), (Words{"earliest_s", "likely_s", "latest_s"}));
  }
}

TEST(Assess, HookupsHoldTheContract) {
  const Json answer = Json::parse(demo().out);
  EXPECT_FALSE(answer["hookups"].empty());
  for (const Json& hookup : answer["hookups"]) {
    for (const char* key : {"machine", "inlet", "outlet", "contact", "verdict", "cords"}) {
      EXPECT_TRUE(hookup.contains(key)) << key;
    }
    expectBand(hookup, "current", "a");
    expectBand(hookup, "voltage", "v");
    expectBand(hookup, "drop", "v");
    expectBand(hookup, "drop", "percent");
    expectBand(hookup, "speed", "rpm");
    for (const Json& cord : hookup["cords"]) {
      expectBand(cord, "conductor", "c");
      expectBand(cord, "surface", "c");
      EXPECT_TRUE(cord["limit_c"].is_number());
      EXPECT_EQ(cord["id"].is_null(), cord["own"].get<bool>());
    }
    EXPECT_EQ(hookup["cords"].back()["own"], true);
  }
}

TEST(Assess, FindingsHoldTheContract) {
  const std::set<std::string> kinds{"hookup", "machine", "cord", "outlet", "circuit", "panel", "pad", "fixed_load"};
  const std::set<std::string> words{"OK", "NOTICE", "CAUTION", "WARNING", "DANGER"};
  const Json answer = Json::parse(demo().out);
  for (const Json& finding : answer["findings"]) {
    for (const char* key : {"code", "severity", "subjects", "text", "why", "numbers", "source", "remedies"}) {
      ASSERT_TRUE(finding.contains(key)) << key;
    }
    EXPECT_EQ(words.count(finding["severity"]), 1U);
    EXPECT_FALSE(finding["why"].empty());
    for (const Json& why : finding["why"]) {
      EXPECT_FALSE(why["text"].get<std::string>().empty());
      EXPECT_TRUE(why["share"].is_null() || (why["share"] >= 0.0 && why["share"] <= 1.0));
    }
    for (const Json& subject : finding["subjects"]) EXPECT_EQ(kinds.count(subject["kind"]), 1U);
    for (const Json& remedy : finding["remedies"]) {
      EXPECT_EQ(keysOf(remedy), (Words{"code", "text", "edits", "after"}));
      EXPECT_TRUE(remedy["edits"].is_array() && !remedy["edits"].empty());
    }
  }
  for (const Json& outlet : answer["outlets"]) expectBand(outlet, "voltage", "v");
}

TEST(Assess, SaysNothingUnknownWhereItHasTheFacts) {
  const Json answer = Json::parse(demo().out);
  for (const Json& finding : answer["findings"]) {
    if (finding["code"] == "unknown.matters") continue;
    EXPECT_EQ(finding["text"].get<std::string>().find("unknown"), std::string::npos) << finding["text"];
    EXPECT_EQ(finding["text"].get<std::string>().find('='), std::string::npos) << finding["text"];
    for (const Json& why : finding["why"]) {
      EXPECT_EQ(why["text"].get<std::string>().find("unknown"), std::string::npos) << why["text"];
    }
  }
}

TEST(Assess, GivesABadSiteItsLineAmongSeveral) {
  const Ran result = ran({"assess", kDemo, "no-such-file.json", kDemo, "--json"});
  EXPECT_EQ(result.exit, 2);
  EXPECT_EQ(result.error, "");
  std::istringstream lines(result.out);
  std::string line;
  ASSERT_TRUE(std::getline(lines, line));
  EXPECT_EQ(line + "\n", demo().out);
  ASSERT_TRUE(std::getline(lines, line));
  const Json bad = Json::parse(line);
  EXPECT_EQ(keysOf(bad), (Words{"site", "error"}));
  EXPECT_EQ(bad["site"], "no-such-file.json");
  EXPECT_EQ(keysOf(bad["error"]), (Words{"pointer", "text"}));
  ASSERT_TRUE(std::getline(lines, line));
  EXPECT_FALSE(std::getline(lines, line));
}

TEST(Assess, PageKeepsToEightyColumnsAndEndsAsItAlwaysDoes) {
  const text::Phrasebook english = text::Phrasebook::load("en").value();
  for (const text::Phrasebook& book : {english, text::pseudoLanguage(english)}) {
    const Ran result = ranIn(book, {"assess", kDemo});
    EXPECT_EQ(result.exit, 1);
    EXPECT_EQ(result.out.find('\x1b'), std::string::npos);
    std::istringstream page(result.out);
    for (std::string row; std::getline(page, row);) EXPECT_LE(text::columnsOf(row), text::kPageWidth) << row;
    const std::string always = text::forConsole(text::wrapped(book.say("always")));
    ASSERT_GT(result.out.size(), always.size());
    EXPECT_EQ(result.out.substr(result.out.size() - always.size()), always);
  }
}

class NewSite : public testing::Test {
 protected:
  void SetUp() override { std::filesystem::create_directories(m_folder); }
  void TearDown() override { std::filesystem::remove_all(m_folder); }

  [[nodiscard]] std::string file() const { return (m_folder / "tower.json").string(); }

 private:
  std::filesystem::path m_folder =
      std::filesystem::path(testing::TempDir()) /
      ("cordreach-" + std::string(testing::UnitTest::GetInstance()->current_test_info()->name()));
};

TEST_F(NewSite, IsInOrderAndSound) {
  EXPECT_EQ(ran({"site", "new", file()}).exit, 0);
  EXPECT_EQ(ran({"site", "check", file()}).exit, 0);
  const Ran assessed = ran({"assess", file(), "--json"});
  EXPECT_EQ(assessed.exit, 0);
  EXPECT_TRUE(Json::parse(assessed.out)["findings"].empty());
}

TEST_F(NewSite, NeverTakesThePlaceOfAnother) {
  ASSERT_EQ(ran({"site", "new", file()}).exit, 0);
  const Ran again = ran({"site", "new", file()});
  EXPECT_EQ(again.exit, 2);
  EXPECT_TRUE(isOneSentence(again.error)) << again.error;
}

}  // namespace
}  // namespace cordreach::console
