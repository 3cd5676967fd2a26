// SPDX-License-Identifier: GPL-3.0-or-later
// `heat`: its JSON and CSV, its exits, its page in every language at hand.
#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <sstream>

#include "app/console/support.h"
#include "physics/cord_heat.h"
#include "text/columns.h"
#include "text/pseudo_language.h"

namespace cordreach::console {
namespace {

using Words = std::vector<std::string>;

Words heat(const Words& more) {
  Words line{"heat", "--cord", "SJTW 16/3 50ft"};
  line.insert(line.end(), more.begin(), more.end());
  return line;
}

nlohmann::ordered_json json(const Words& more) {
  Words line = heat(more);
  line.push_back("--json");
  return nlohmann::ordered_json::parse(ran(line).out);
}

TEST(Heat, JsonHasTheKeysOfTheContractAndTheirBands) {
  const auto answer = json({"--amps", "10A", "--for", "2h"});
  Words keys;
  for (const auto& item : answer.items()) keys.push_back(item.key());
  EXPECT_EQ(keys, (Words{"steady", "beyond_model", "limit_c", "time_to_limit_s", "time_to_limit_low_s",
                         "time_to_limit_high_s", "series"}));
  for (const char* key : {"conductor_c", "surface_c", "conductor_low_c", "conductor_high_c"}) {
    EXPECT_TRUE(answer["steady"][key].is_number()) << key;
  }
  EXPECT_LT(answer["steady"]["conductor_low_c"], answer["steady"]["conductor_c"]);
  EXPECT_LT(answer["steady"]["conductor_c"], answer["steady"]["conductor_high_c"]);
  EXPECT_EQ(answer["limit_c"], 60.0);
}

TEST(Heat, SteadyIsThatOfTheModelInTheAirGiven) {
  const auto answer = json({"--amps", "10A", "--for", "2h", "--ambient", "86F", "--lay", "carpet"});
  physics::CordSection section{units::WireSize::awg(16)};
  section.laying = tables::Laying::Carpet;
  const auto steady = physics::steady(section, 10.0 * units::ampere, units::Temperature::fromCelsius(30.0));
  EXPECT_NEAR(answer["steady"]["conductor_c"], steady->conductor.celsius(), 1e-3);
  EXPECT_NEAR(answer["steady"]["surface_c"], steady->surface.celsius(), 1e-3);
}

TEST(Heat, SeriesRisesFromTheAirToTheEndOfTheRun) {
  const auto series = json({"--amps", "10A", "--for", "100min", "--ambient", "20C"})["series"];
  EXPECT_EQ(series.front()["time_s"], 0.0);
  EXPECT_NEAR(series.front()["conductor_c"], 20.0, 1e-6);
  EXPECT_EQ(series.back()["time_s"], 6000.0);
  for (std::size_t i = 1; i < series.size(); ++i) {
    EXPECT_LT(series[i - 1]["time_s"], series[i]["time_s"]);
    EXPECT_LE(series[i - 1]["conductor_c"], series[i]["conductor_c"].get<double>() + 0.01);
  }
}

TEST(Heat, BeyondTheModelIsNullAndDanger) {
  const auto answer = json({"--amps", "60A", "--for", "2h", "--lay", "covered"});
  EXPECT_TRUE(answer["steady"].is_null());
  EXPECT_EQ(answer["beyond_model"], true);
  EXPECT_TRUE(answer["series"].back()["conductor_c"].is_null());
  EXPECT_GT(answer["time_to_limit_s"], 0.0);
  EXPECT_LT(answer["time_to_limit_low_s"], answer["time_to_limit_high_s"]);
  EXPECT_NE(ran(heat({"--amps", "60A", "--for", "2h"})).out.find("DANGER. "), std::string::npos);
}

TEST(Heat, ExitsOneOverALimitAndZeroBelow) {
  EXPECT_EQ(ran(heat({"--amps", "10A", "--for", "2h"})).exit, 0);
  EXPECT_EQ(ran(heat({"--amps", "12A", "--for", "2h", "--turns", "12", "--coiled", "30ft"})).exit, 1);
  EXPECT_EQ(ran(heat({"--amps", "12A", "--for", "3min", "--turns", "12"})).exit, 0);
  EXPECT_EQ(ran(heat({"--amps", "12A", "--for", "2h", "--coiled", "0ft"})).exit, 0);
}

TEST(Heat, CallsNoCordSoundOverItsRatedAmps) {
  const Ran result = ran(heat({"--amps", "15A", "--for", "2h"}));
  EXPECT_EQ(result.exit, 1);
  EXPECT_NE(result.out.find("It is rated 13 A; 15 A flows."), std::string::npos) << result.out;
}

TEST(Heat, CsvHasOneRowAPoint) {
  Words line = heat({"--amps", "10A", "--for", "10s", "--csv"});
  std::istringstream csv(ran(line).out);
  std::size_t rows = 0;
  for (std::string row; std::getline(csv, row); ++rows) {
    EXPECT_EQ(std::count(row.begin(), row.end(), ','), 6) << row;
  }
  EXPECT_EQ(rows, 12U);
}

TEST(Heat, PageKeepsToEightyColumnsInAnyLanguage) {
  const text::Phrasebook english = text::Phrasebook::load("en").value();
  for (const text::Phrasebook& book : {english, text::pseudoLanguage(english)}) {
    for (const char* amps : {"10A", "15A", "18A", "60A"}) {
      for (const char* lay : {"floor", "coiled", "reel", "covered"}) {
        std::istringstream page(ranIn(book, heat({"--amps", amps, "--for", "95min", "--lay", lay})).out);
        for (std::string row; std::getline(page, row);) EXPECT_LE(text::columnsOf(row), text::kPageWidth) << row;
      }
    }
  }
}

TEST(Heat, BelievesOneReadingOfTheJacketWithinItsClamp) {
  const auto plain = json({"--amps", "10A", "--for", "4h"});
  const auto hot = json({"--amps", "10A", "--for", "4h", "--measured", "46C at 13A in 25C"});
  EXPECT_GT(hot["steady"]["conductor_c"].get<double>(), plain["steady"]["conductor_c"].get<double>() + 1.5);
  EXPECT_GT(hot["loss_percent"], 60.0);
  EXPECT_LT(hot["loss_percent"], 100.0);
  EXPECT_FALSE(plain.contains("loss_percent"));
  const auto asMeasured = json({"--amps", "13A", "--for", "8h", "--measured", "46C at 13A in 25C"});
  EXPECT_NEAR(asMeasured["steady"]["surface_c"].get<double>(), 46.0, 0.01);
  EXPECT_NEAR(json({"--amps", "13A", "--for", "2h", "--measured", "99C at 13A in 25C"})["loss_percent"], 60.0, 0.01);
  const std::string doubtful = ran(heat({"--amps", "10A", "--for", "2h", "--measured", "99C at 13A"})).out;
  EXPECT_NE(doubtful.find("measure again"), std::string::npos) << doubtful;
  EXPECT_EQ(ran(heat({"--amps", "10A", "--for", "2h", "--measured", "20C at 13A"})).exit, 2);
}

}  // namespace
}  // namespace cordreach::console
