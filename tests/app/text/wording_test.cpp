// SPDX-License-Identifier: GPL-3.0-or-later
// Every code that core can give has words: found in core's sources, so that a new one can't be forgotten.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <regex>
#include <set>

#include "io/error_codes.h"
#include "rules/rule_table.h"
#include "text/error_text.h"
#include "text/phrasebook.h"

namespace cordreach::text {
namespace {

namespace fs = std::filesystem;

std::set<std::string> foundIn(const std::vector<fs::path>& roots, const std::regex& pattern) {
  std::set<std::string> found;
  for (const fs::path& root : roots) {
    for (const auto& entry : fs::recursive_directory_iterator(root)) {
      if (entry.path().extension() != ".cpp") continue;
      std::ifstream file(entry.path());
      const std::string source{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
      for (std::sregex_iterator at(source.begin(), source.end(), pattern), end; at != end; ++at) {
        found.insert((*at)[1].str());
      }
    }
  }
  return found;
}

const Phrasebook& english() {
  static const Phrasebook book = Phrasebook::load("en").value();
  return book;
}

// The reader takes the last of two and says nothing.
TEST(Wording, NoKeyStandsTwiceInTheBook) {
  std::ifstream file("resources/words/en.json");
  const std::regex key(R"re(^\s*"([^"]+)":)re");
  std::set<std::string> seen;
  std::smatch found;
  for (std::string line; std::getline(file, line);) {
    if (!std::regex_search(line, found, key)) continue;
    EXPECT_TRUE(seen.insert(found[1].str()).second) << found[1].str();
  }
  EXPECT_GT(seen.size(), 500U);
}

TEST(Wording, EveryErrorOfTheSourcesHasASentence) {
  const auto codes = foundIn({"core", "app"}, std::regex(R"re(\bError\{\s*"([a-z0-9_]+\.[a-z0-9_.]+)")re"));
  EXPECT_GT(codes.size(), 40U);
  for (const std::string& code : codes) EXPECT_TRUE(english().has("error." + code)) << code;
}

TEST(Wording, EveryErrorOfTheSiteFileIsSaidWithItsArguments) {
  for (const io::ErrorCode& known : io::kErrorCodes) {
    base::Arguments arguments;
    std::istringstream names{std::string(known.arguments)};
    for (std::string name; names >> name;) arguments.push_back({name, "x-" + name});
    const std::string said = errorSentence(english(), {std::string(known.code), "/place", arguments});
    EXPECT_TRUE(english().has("error." + std::string(known.code))) << known.code;
    EXPECT_EQ(said.find(english().say("word.unknown")), std::string::npos) << known.code << ": " << said;
    EXPECT_NE(said.back(), '.') << said;
  }
}

TEST(Wording, EveryRuleHasHeadBodyOrderAndShortName) {
  for (const rules::Rule& rule : rules::ruleTable()) {
    for (const char* part : {".head", ".body", ".order"}) {
      EXPECT_TRUE(english().has("finding." + std::string(rule.code) + part)) << rule.code << part;
    }
    EXPECT_TRUE(english().has("short." + std::string(rule.code))) << rule.code;
  }
}

TEST(Wording, EveryReasonAndRemedyOfTheSourcesHasWords) {
  const auto codes = foundIn({"core/rules", "core/planning"}, std::regex(R"re("([a-z0-9_]+\.[a-z0-9_]+)")re"));
  // Names of edits are for the undo list.
  const std::set<std::string> editCodes =
      foundIn({"core/planning"}, std::regex(R"re((?:\{|code = )"([a-z]+\.[a-z_]+)"(?:, |;))re"));
  EXPECT_GT(codes.size(), 60U);
  for (const std::string& code : codes) {
    const bool worded = english().has("reason." + code) || english().has("remedy." + code) ||
                        english().has("finding." + code + ".head") || english().has(code);
    EXPECT_TRUE(worded || editCodes.count(code) == 1) << code;
  }
}

TEST(Wording, NoVerdictCallsANeverTrippingBreakerGoodNews) {
  for (const auto& [code, phrase] : english().phrases()) {
    for (const PhrasePart& part : phrase.parts()) {
      if (part.kind != PartKind::Words || part.text.find("never trip") == std::string::npos) continue;
      const std::string whole = english().say(code);
      EXPECT_NE(whole.find("protect"), std::string::npos) << code;
    }
  }
}

}  // namespace
}  // namespace cordreach::text
