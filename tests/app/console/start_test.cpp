// SPDX-License-Identifier: GPL-3.0-or-later
// `start`: its JSON, its exits, its page in every language at hand.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <sstream>

#include "app/console/support.h"
#include "text/columns.h"
#include "text/pseudo_language.h"

namespace cordreach::console {
namespace {

using Words = std::vector<std::string>;

constexpr const char* kDemo = "resources/demo/building.json";

Words burnisher(const Words& more = {}) {
  Words line{"start", "--machine", "15A dc 14AWG/50ft", "--kind", "burnisher", "--breaker",
             "20A",   "--run",     "60ft/12AWG"};
  line.insert(line.end(), more.begin(), more.end());
  return line;
}

nlohmann::ordered_json json(Words line) {
  line.push_back("--json");
  return nlohmann::ordered_json::parse(ran(line).out);
}

TEST(Start, JsonHasTheKeysOfTheContract) {
  const auto answer = json(burnisher());
  Words keys;
  for (const auto& item : answer.items()) keys.push_back(item.key());
  EXPECT_EQ(keys, (Words{"hookup",
                         "machine",
                         "verdict",
                         "peak_a",
                         "peak_low_a",
                         "peak_high_a",
                         "settled_a",
                         "settled_low_a",
                         "settled_high_a",
                         "time_to_speed_s",
                         "time_to_speed_low_s",
                         "time_to_speed_high_s",
                         "lowest_v",
                         "lowest_low_v",
                         "lowest_high_v",
                         "i2t_a2s",
                         "i2t_low_a2s",
                         "i2t_high_a2s",
                         "source_v",
                         "source_ohm",
                         "trip",
                         "outlet",
                         "panel",
                         "dips",
                         "outlets",
                         "series"}));
  EXPECT_TRUE(answer["trip"]["likely_s"].is_null());
  EXPECT_LT(answer["time_to_speed_low_s"], answer["time_to_speed_s"]);
  EXPECT_LT(answer["time_to_speed_s"], answer["time_to_speed_high_s"]);
  EXPECT_EQ(answer["series"].front()["time_s"], 0.0);
  EXPECT_NEAR(answer["series"].front()["current_a"], answer["peak_a"], 1e-3);
  EXPECT_NEAR(answer["series"].back()["speed_percent"], 99.9, 1e-6);
}

TEST(Start, ASoundBurnisherIsSound) {
  const Ran answer = ran(burnisher());
  EXPECT_EQ(answer.exit, kSound) << answer.out;
  EXPECT_EQ(json(burnisher())["verdict"], "NOTICE");  // 106 A: a breaker that acts at once from 100 A may
}

TEST(Start, ALongerCordLowersThePeakAndLengthensTheStart) {
  const auto plain = json(burnisher());
  const auto longer = json(burnisher({"--cord", "SJTW 14/3 100ft"}));
  EXPECT_LT(longer["peak_a"], plain["peak_a"]);
  EXPECT_GT(longer["time_to_speed_s"], plain["time_to_speed_s"]);
  EXPECT_GT(longer["source_ohm"], plain["source_ohm"]);
}

TEST(Start, InertiaIsTakenAsGiven) {
  const auto one = json(burnisher({"--inertia", "0.1", "--speed", "2000"}));
  const auto two = json(burnisher({"--inertia", "0.2", "--speed", "2000"}));
  EXPECT_NEAR(two["time_to_speed_s"].get<double>(), 2.0 * one["time_to_speed_s"].get<double>(), 1e-4);
}

TEST(Start, WhatIsOnThereDips) {
  const auto answer = json(burnisher({"--carrying", "5A"}));
  ASSERT_EQ(answer["dips"].size(), 1u);
  EXPECT_EQ(answer["dips"][0]["kind"], "fixed_load");
  EXPECT_GT(answer["dips"][0]["dip_percent"], 5.0);
  EXPECT_EQ(answer["verdict"], "NOTICE");
}

TEST(Start, OneThatNeverComesUpIsUnsound) {
  const Words line{
      "start",      "--machine", "15A induction 16AWG/50ft", "--kind", "slow-machine", "--breaker", "20A", "--run",
      "60ft/12AWG", "--cord",    "SJTW 16/3 100ft"};
  EXPECT_EQ(ran(line).exit, kUnsound);
  EXPECT_TRUE(json(line)["time_to_speed_s"].is_null());
  EXPECT_EQ(json(line)["verdict"], "WARNING");
}

TEST(Start, AHookupOfASiteAnswersForItsBuilding) {
  const auto answer = json({"start", kDemo, "--hookup", "H03"});
  EXPECT_EQ(answer["hookup"], "H03");
  EXPECT_GT(answer["outlets"].size(), 20u);
  EXPECT_GT(answer["dips"].size(), 3u);
}

TEST(Start, RefusesInOneSentence) {
  for (const Words& line : {Words{"start"}, Words{"start", kDemo}, Words{"start", kDemo, "--hookup", "H99"},
                            burnisher({"--inertia", "0"}), burnisher({"--inertia", "x"}), burnisher({"--speed", "1e9"}),
                            burnisher({"--kind", "toaster"}), burnisher({"--cord", "nonsense"}),
                            burnisher({"--carrying", "five"}), Words{"start", "no.json", "--hookup", "H"},
                            Words{"start", "--machine", "15A dc 14AWG/50ft", "--breaker", "20A"}}) {
    const Ran answer = ran(line);
    EXPECT_EQ(answer.exit, kBadInput) << answer.out;
    EXPECT_TRUE(isOneSentence(answer.error)) << answer.error;
    EXPECT_EQ(answer.out, "");
  }
}

TEST(Start, PageStandsTheLongerLanguage) {
  const text::Phrasebook english = text::Phrasebook::load("en").value();
  for (const text::Phrasebook& book : {english, text::pseudoLanguage(english)}) {
    const Ran answer = ranIn(book, {"start", kDemo, "--hookup", "H03"});
    std::istringstream lines(answer.out);
    for (std::string line; std::getline(lines, line);) EXPECT_LE(text::columnsOf(line), text::kPageWidth) << line;
  }
}

}  // namespace
}  // namespace cordreach::console
