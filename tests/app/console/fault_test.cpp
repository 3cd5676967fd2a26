// SPDX-License-Identifier: GPL-3.0-or-later
// `fault`: its JSON, its exits, its words.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "app/console/support.h"

namespace cordreach::console {
namespace {

std::vector<std::string> line(std::vector<std::string> more, const std::string& cord = "SJTW 12/3 50ft") {
  std::vector<std::string> all{"fault", "--cord", cord, "--breaker", "20A", "--run", "66ft/12AWG"};
  all.insert(all.end(), more.begin(), more.end());
  return all;
}

nlohmann::ordered_json json(const Ran& result) { return nlohmann::ordered_json::parse(result.out); }

TEST(Fault, JsonHasEveryKeyWithItsBand) {
  const auto answer = json(ran(line({"--json"})));
  std::vector<std::string> keys;
  for (const auto& [key, value] : answer.items()) keys.push_back(key);
  EXPECT_EQ(keys, (std::vector<std::string>{"current_a", "current_low_a", "current_high_a", "clearing_claimed",
                                            "cleared", "damage_s", "conductor_c", "conductor_low_c", "conductor_high_c",
                                            "limit_c", "arc_low_a", "arc_high_a", "arc_cleared", "earth", "touch_v",
                                            "touch_low_v", "touch_high_v", "touch_s", "verdict"}));
  EXPECT_LT(answer["current_low_a"], answer["current_a"]);
  EXPECT_LT(answer["current_a"], answer["current_high_a"]);
  EXPECT_EQ(answer["limit_c"], 160);
}

TEST(Fault, ExitsByWhatBecomesOfTheCordAndOfTheFrame) {
  EXPECT_EQ(ran(line({"--json"})).exit, 0);
  EXPECT_EQ(ran(line({"--json"}, "SJTW 18/3 50ft")).exit, 1);
  EXPECT_EQ(ran(line({"--json", "--no-earth"})).exit, 1);
  EXPECT_EQ(ran(line({"--json", "--no-earth", "--ground-fault"})).exit, 0);
  EXPECT_EQ(ran(line({"--json", "--may-not-trip"})).exit, 1);
}

TEST(Fault, WithoutAnEarthNothingEndsTheTouchVolts) {
  const auto broken = json(ran(line({"--json", "--no-earth"})));
  EXPECT_TRUE(broken["touch_s"].is_null());
  EXPECT_NEAR(broken["touch_v"], 120.0, 1.0);
  EXPECT_EQ(broken["verdict"], "DANGER");
}

TEST(Fault, ClaimsNothingOfAnInverterAndKnowsItsStatedLimit) {
  const auto unknown = json(ran(line({"--json", "--source", "inverter"})));
  EXPECT_FALSE(unknown["clearing_claimed"]);
  EXPECT_TRUE(unknown["cleared"].is_null());
  EXPECT_TRUE(unknown["current_a"].is_null());
  const auto stated = json(ran(line({"--json", "--source", "inverter", "--limit", "30A"})));
  EXPECT_EQ(stated["current_a"], 30);
  EXPECT_TRUE(stated["cleared"].is_null());
}

TEST(Fault, NeverTellsToResetAndAlwaysSaysWhoDecides) {
  for (const std::string cord : {"SJTW 12/3 25ft", "SJTW 14/3 50ft", "SJTW 18/3 50ft"}) {
    const Ran page = ran(line({}, cord));
    EXPECT_NE(page.out.find("Not a substitute for an electrician."), std::string::npos);
    const std::size_t reset = page.out.find("reset");
    if (reset != std::string::npos) {
      EXPECT_EQ(page.out.substr(reset - 6, 5), "don't") << page.out;
    }
  }
}

TEST(Fault, RefusesWhatCannotBeInOneSentence) {
  const std::vector<std::vector<std::string>> bad = {
      line({"--source", "mains"}),  line({"--carrying", "25A"}),
      line({"--ambient", "500F"}),  line({"--limit", "0A"}),
      line({}, "SJTW 50ft"),        {"fault", "--cord", "SJTW 12/3 50ft", "--breaker", "x"},
      line({"--carrying", "much"}), {"fault", "--breaker", "20A"}};
  for (const auto& arguments : bad) {
    const Ran result = ran(arguments);
    EXPECT_EQ(result.exit, 2);
    EXPECT_TRUE(result.out.empty());
    EXPECT_TRUE(isOneSentence(result.error)) << result.error;
  }
}

}  // namespace
}  // namespace cordreach::console
