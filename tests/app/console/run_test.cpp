// SPDX-License-Identifier: GPL-3.0-or-later
// `run`: its JSON, its table, its exits, its words.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <sstream>

#include "app/console/support.h"

namespace cordreach::console {
namespace {

using ::testing::HasSubstr;
using Json = nlohmann::ordered_json;

constexpr const char* kDemo = "resources/demo/building.json";

TEST(Run, JsonNamesWhatHappensWhenAndToWhat) {
  const Ran result = ran({"run", kDemo, "--until", "1h", "--json"});
  EXPECT_EQ(result.exit, 1);
  const Json json = Json::parse(result.out);
  EXPECT_EQ(json["start_s"], 18 * 3600);
  EXPECT_EQ(json["until_s"], 3600);
  bool tripped = false;
  for (const Json& event : json["events"]) {
    EXPECT_TRUE(event["time_s"].is_number());
    if (event["kind"] != "trip") continue;
    tripped = true;
    EXPECT_EQ(event["subject"]["kind"], "circuit");
    EXPECT_TRUE(event["after"].is_object());
  }
  EXPECT_TRUE(tripped);
  for (const Json& circuit : json["circuits"]) {
    if (circuit["trip"].is_null()) continue;
    // Asked for where a curve trips.
    EXPECT_EQ(circuit["trip"]["probability"].is_null(), circuit["trip"]["earliest_s"].is_null()) << circuit;
    EXPECT_TRUE(circuit["trip"].contains("find_out")) << circuit;
  }
  EXPECT_FALSE(json["cords"].empty());
}

TEST(Run, TableHasARowForEveryCircuitAndCordEveryFiveMinutes) {
  const Ran result = ran({"run", kDemo, "--until", "10min", "--csv"});
  std::istringstream lines(result.out);
  std::string line;
  std::getline(lines, line);
  EXPECT_EQ(line, "time_s,kind,id,current_a,conductor_c,surface_c");
  int ofOneCircuit = 0;
  while (std::getline(lines, line)) ofOneCircuit += line.find(",circuit,\"1A-3\",") != std::string::npos ? 1 : 0;
  EXPECT_EQ(ofOneCircuit, 3);
}

TEST(Run, PageSaysWhatNotToStartAndWhy) {
  const Ran result = ran({"run", kDemo, "--until", "3h"});
  EXPECT_EQ(result.exit, 1);
  EXPECT_THAT(result.out, HasSubstr("Don't start this plan as it stands"));
  EXPECT_THAT(result.out, HasSubstr("The breaker of 1A-3"));
  EXPECT_THAT(result.out, HasSubstr("vending"));
  EXPECT_THAT(result.out, HasSubstr("Not a substitute for an electrician. Local code decides.\n"));
  std::istringstream lines(result.out);
  for (std::string line; std::getline(lines, line);) EXPECT_LE(line.size(), 110U) << line;
}

// The cooler's running amps are by its plate alone; when it comes on is known.
TEST(Run, SaysWhatIsMostWorthFindingOut) {
  const Json json = Json::parse(ran({"run", kDemo, "--until", "3h", "--json"}).out);
  bool told = false;
  for (const Json& circuit : json["circuits"]) {
    if (circuit["trip"].is_null() || circuit["trip"]["find_out"].is_null()) continue;
    told = true;
    const Json& find = circuit["trip"]["find_out"];
    EXPECT_NE(find["kind"], "breaker");  // which nobody can find out without tripping it
    EXPECT_NE(find["kind"], "cord_heat");
    EXPECT_GE(find["share"], 0.01);
    EXPECT_LE(find["share"], 1.0);
  }
  EXPECT_TRUE(told);
  std::string page = ran({"run", kDemo, "--until", "3h"}).out;
  std::replace(page.begin(), page.end(), '\n', ' ');
  EXPECT_THAT(page, HasSubstr(" of the runs when "));
  EXPECT_THAT(page, HasSubstr("Most worth finding out:"));
}

TEST(Run, IsSoundWhereNothingHappens) {
  EXPECT_EQ(ran({"run", "tests/golden/sound/burnisher_on_its_own_cord/site.json"}).exit, 0);
}

TEST(Run, RefusesWhatItCannotRun) {
  EXPECT_THAT(ran({"run", kDemo, "--until", "13h"}).error, HasSubstr("longer than one run can be"));
  EXPECT_THAT(ran({"run", kDemo, "--until", "0min"}).error, HasSubstr("--until"));
  EXPECT_THAT(ran({"run", kDemo, "--json", "--csv"}).error, HasSubstr("can't both"));
  EXPECT_THAT(ran({"run", "no.json"}).error, HasSubstr("no.json"));
  EXPECT_EQ(ran({"run", "no.json"}).exit, 2);
}

}  // namespace
}  // namespace cordreach::console
