// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers as people read them.
#include "text/quantity_text.h"

#include <gtest/gtest.h>

#include <cmath>

#include "text/columns.h"

namespace cordreach::text {
namespace {

std::string said(const std::string& name, double value, UnitSystem units = UnitSystem::Us) {
  return forConsole(quantityText(Phrasebook::load("en", units).value(), name, value));
}

TEST(QuantityText, RoundsAmpsAndVoltsToWholeOnes) {
  EXPECT_EQ(said("current_a", 16.46), "16 A");
  EXPECT_EQ(said("voltage_v", 101.6), "102 V");
  EXPECT_EQ(said("current_a", 0.43), "0.4 A");
  EXPECT_EQ(said("leakage_ma", 4.5), "4.5 mA");
}

TEST(QuantityText, FollowsTheUnitSystem) {
  EXPECT_EQ(said("conductor_c", 60.0), "140 °F");
  EXPECT_EQ(said("conductor_c", 60.4, UnitSystem::Metric), "60 °C");
  EXPECT_EQ(said("plug_rise_k", 30.0), "54 °F");
  EXPECT_EQ(said("length_m", 22.86), "75 ft");
  EXPECT_EQ(said("length_m", 22.86, UnitSystem::Metric), "23 m");
  EXPECT_EQ(said("length_m", 7.5, UnitSystem::Metric), "7.5 m");
}

TEST(QuantityText, WordsSpansAsTheEarTakesThem) {
  EXPECT_EQ(said("likely_s", 0.0), "0 s");
  EXPECT_EQ(said("likely_s", 0.42), "under a second");
  EXPECT_EQ(said("likely_s", 40.2), "40 s");
  EXPECT_EQ(said("likely_s", 58.0), "about a minute");
  EXPECT_EQ(said("likely_s", 256.0), "about 4 minutes");
  EXPECT_EQ(said("run_s", 480.0), "8 min");
  EXPECT_EQ(said("run_s", 7200.0), "2 h");
  EXPECT_EQ(said("run_s", 5400.0), "1 h 30 min");
  EXPECT_EQ(said("likely_s", 9100.0), "about 2.5 hours");
  EXPECT_EQ(said("latest_s", std::numeric_limits<double>::infinity()), "never");
}

TEST(QuantityText, WritesTimesOfDayGaugesAndSpeeds) {
  EXPECT_EQ(said("powered_from_s", 18.25 * 3600), "18:15");
  EXPECT_EQ(said("powered_until_s", 25.5 * 3600), "01:30");
  EXPECT_EQ(said("clock_s", 18.35 * 3600), "18:21");
  EXPECT_EQ(said("gauge_awg", 14), "14 AWG");
  EXPECT_EQ(said("gauge_awg", 0), "1/0 AWG");
  EXPECT_EQ(said("gauge_awg", -3), "4/0 AWG");
  EXPECT_EQ(said("speed_rpm", 1604.0), "1,600 turns a minute");
  EXPECT_EQ(said("size_mm2", 2.5), "2.5 mm²");
}

TEST(QuantityText, WritesBareNumbersWithoutTrailingZeros) {
  EXPECT_EQ(said("turns", 12.0), "12");
  EXPECT_EQ(said("drag_factor", 1.25), "1.25");
  EXPECT_EQ(said("sockets", 1234567.0), "1,234,567");
  EXPECT_EQ(said("change", -2.5), "\u22122.5");
  EXPECT_EQ(said("change_percent", -0.2), "\u22120.2 %");
  EXPECT_EQ(numberText(Locale{}, -0.04, 1), "0");
}

TEST(QuantityText, SetsANarrowSpaceThatDoesNotBreak) {
  EXPECT_EQ(quantityText(Phrasebook::load("en").value(), "current_a", 16.0), "16\u202FA");
}

TEST(QuantityText, LetsTheDecimalDecideWhenWholesWouldBeEqual) {
  const Phrasebook book = Phrasebook::parse(R"({"p": "{current_a} of {rating_a}", "unit.amperes": "{n} A"})").value();
  EXPECT_EQ(book.say("p", {{"current_a", 15.4}, {"rating_a", 15.0}}), "15.4 A of 15 A");
  EXPECT_EQ(book.say("p", {{"current_a", 16.6}, {"rating_a", 15.0}}), "17 A of 15 A");
}

}  // namespace
}  // namespace cordreach::text
