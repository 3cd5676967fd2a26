// SPDX-License-Identifier: GPL-3.0-or-later
// What people type, and what is refused rather than guessed.
#include "units/parse.h"

#include <gtest/gtest.h>

#include <string>

namespace cordreach::units {
namespace {

template <class T>
std::string codeOf(const base::Result<T>& result) {
  return result.ok() ? "" : result.error().code;
}

double metres(std::string_view text) {
  const auto length = parseLength(text);
  return length.ok() ? length.value().in(metre) : -1.0;
}

double seconds(std::string_view text) {
  const auto duration = parseDuration(text);
  return duration.ok() ? duration.value().in(second) : -1.0;
}

double celsius(std::string_view text) {
  const auto temperature = parseTemperature(text);
  return temperature.ok() ? temperature.value().celsius() : -1000.0;
}

TEST(ParseLength, ReadsBothSystems) {
  for (const auto text :
       {"75 ft", "75ft", "75 FT.", "75'", "75 feet", " 75\u00A0ft ", "75-foot", "75 pies", "75\u2032"}) {
    EXPECT_NEAR(metres(text), 22.86, 1e-12) << text;
  }
  EXPECT_NEAR(metres("22 m"), 22.0, 1e-12);
  EXPECT_NEAR(metres("22,5 m"), 22.5, 1e-12);
  EXPECT_NEAR(metres("22.5m"), 22.5, 1e-12);
  EXPECT_NEAR(metres("6 in"), 0.1524, 1e-12);
  EXPECT_NEAR(metres("6\""), 0.1524, 1e-12);
  EXPECT_NEAR(metres("150 mm"), 0.15, 1e-12);
  EXPECT_NEAR(metres("25 cm"), 0.25, 1e-12);
  EXPECT_NEAR(metres("0 m"), 0.0, 0.0);
}

TEST(ParseLength, ReadsFeetAndInches) {
  for (const auto text : {"5 ft 6 in", "5'6\"", "5' 6", "5ft6in", "5\u20196\u201D", "5' 6''"}) {
    EXPECT_NEAR(metres(text), 1.6764, 1e-12) << text;
  }
  EXPECT_NEAR(metres("5 1/2 in"), 0.1397, 1e-12);
  EXPECT_NEAR(metres("5-1/2 in"), 0.1397, 1e-12);
  EXPECT_NEAR(metres("5\u00BD in"), 0.1397, 1e-12);
  EXPECT_EQ(codeOf(parseLength("5 ft 12 in")), "units.out_of_range");
  EXPECT_EQ(codeOf(parseLength("5 in 6 ft")), "units.unknown_unit");
  EXPECT_EQ(codeOf(parseLength("5 m 6 in")), "units.unknown_unit");
}

TEST(ParseLength, UsesTheAssumedUnitForABareNumberOnly) {
  EXPECT_EQ(codeOf(parseLength("75")), "units.missing_unit");
  EXPECT_NEAR(parseLength("75", foot).value().in(foot), 75.0, 1e-12);
  EXPECT_NEAR(parseLength("75 m", foot).value().in(metre), 75.0, 1e-12);
}

TEST(ParseNumber, RefusesOneSeparatorBeforeThreeDigitsAsAmbiguous) {
  for (const auto text : {"1,500 ft", "1.500 ft", "12,345 ft", "999.999 ft", "-1,500 ft"}) {
    EXPECT_EQ(codeOf(parseLength(text)), "units.ambiguous_number") << text;
    EXPECT_EQ(parseLength(text).error().place, text);
  }
  EXPECT_EQ(codeOf(parsePower("1,500 W")), "units.ambiguous_number");
}

TEST(ParseNumber, ReadsThousandsWhereTheyAreCertain) {
  EXPECT_NEAR(metres("1,500.5 m"), 1500.5, 1e-9);
  EXPECT_NEAR(metres("1.500,5 m"), 1500.5, 1e-9);
  EXPECT_NEAR(metres("0.125 m"), 0.125, 1e-12);
  EXPECT_NEAR(metres("0,125 m"), 0.125, 1e-12);
  EXPECT_NEAR(metres(".125 m"), 0.125, 1e-12);
  EXPECT_NEAR(metres("1500.125 m"), 1500.125, 1e-9);
  EXPECT_NEAR(metres("2.5 m"), metres("2,5 m"), 0.0);
  EXPECT_NEAR(parsePower("1,234,567 W").value().in(watt), 1234567.0, 1e-6);
}

TEST(ParseNumber, RefusesWhatIsNoNumber) {
  for (const auto text : {"ft", "NaN ft", "inf ft", "-inf m", "--5 m", "1..5 m", "1,5,0 m", "5. m", ", m", "1,50.5 m",
                          "0x10 m", "1.5.5,5 m"}) {
    EXPECT_FALSE(parseLength(text).ok()) << text;
  }
  EXPECT_EQ(codeOf(parseLength("NaN ft")), "units.not_a_number");
  EXPECT_EQ(codeOf(parseLength("")), "units.empty");
  EXPECT_EQ(codeOf(parseLength(" \t ")), "units.empty");
  EXPECT_EQ(codeOf(parseLength("1e3 m")), "units.unknown_unit");
  EXPECT_EQ(codeOf(parseLength("5 parsecs")), "units.unknown_unit");
  EXPECT_EQ(parseLength("5 parsecs").error().arguments, (base::Arguments{{"unit", std::string("parsecs")}}));
}

TEST(ParseNumber, RefusesNegativeAndAbsurdSizes) {
  EXPECT_EQ(codeOf(parseLength("-5 ft")), "units.negative");
  EXPECT_EQ(codeOf(parseLength("\u22125 ft")), "units.negative");
  EXPECT_EQ(codeOf(parseCurrent("-5 A")), "units.negative");
  EXPECT_EQ(codeOf(parseLength("101 km")), "units.out_of_range");
  EXPECT_EQ(codeOf(parseLength("99999999999999999999999999999 m")), "units.out_of_range");
  EXPECT_EQ(codeOf(parseLength(std::string(5000, '9') + " m")), "units.not_a_number");
}

TEST(ParseNumber, SurvivesAnyBytes) {
  for (int byte = 0; byte < 256; ++byte) {
    const std::string text = "5" + std::string(1, static_cast<char>(byte)) + "\xC3(\xFF";
    const auto length = parseLength(text);
    EXPECT_FALSE(length.ok());
    EXPECT_EQ(length.error().place.find('\xFF'), std::string::npos);
  }
}

TEST(ParseCurrent, ReadsAmperes) {
  for (const auto text : {"15A", "15 A", "15 amps", "15 amperios", "15000 mA", "0.015 kA"}) {
    EXPECT_NEAR(parseCurrent(text).value().in(ampere), 15.0, 1e-12) << text;
  }
  EXPECT_NEAR(parseCurrent("600 mA").value().in(ampere), 0.6, 1e-12);
  EXPECT_NEAR(parseCurrent("12,5", ampere).value().in(ampere), 12.5, 1e-12);
  EXPECT_EQ(codeOf(parseCurrent("15 V")), "units.unknown_unit");
}

TEST(ParseVoltage, ReadsVolts) {
  for (const auto text : {"120V", "120 volts", "120 VAC", "120 V~", "0.12 kV"}) {
    EXPECT_NEAR(parseVoltage(text).value().in(volt), 120.0, 1e-12) << text;
  }
}

TEST(ParsePower, ReadsWattsAndHorsepower) {
  EXPECT_NEAR(parsePower("1500 W").value().in(watt), 1500.0, 1e-9);
  EXPECT_NEAR(parsePower("1.5 kW").value().in(watt), 1500.0, 1e-9);
  for (const auto text : {"1.5 hp", "1,5 HP", "1 1/2 hp", "1-1/2 HP", "1\u00BD hp", "3/2 hp"}) {
    EXPECT_NEAR(parsePower(text).value().in(horsepower), 1.5, 1e-12) << text;
  }
}

TEST(ParseDuration, ReadsParts) {
  EXPECT_NEAR(seconds("2h"), 7200.0, 1e-9);
  EXPECT_NEAR(seconds("90 min"), 5400.0, 1e-9);
  EXPECT_NEAR(seconds("45s"), 45.0, 1e-9);
  for (const auto text : {"1h30", "1 h 30 min", "1h30m", "1.5 h", "1,5h", "90m", "1 hora 30 minutos"}) {
    EXPECT_NEAR(seconds(text), 5400.0, 1e-9) << text;
  }
  EXPECT_NEAR(seconds("1h2m3s"), 3723.0, 1e-9);
  EXPECT_EQ(codeOf(parseDuration("1h90")), "units.out_of_range");
  EXPECT_EQ(codeOf(parseDuration("30 min 1 h")), "units.unknown_unit");
  EXPECT_EQ(codeOf(parseDuration("-2h")), "units.negative");
}

TEST(ParseTemperature, ReadsThreeScales) {
  for (const auto text : {"77 \u00B0F", "77F", "77 f", "25C", "25 \u00B0C", "25 \u00BAC", "25 deg C", "298.15 K"}) {
    EXPECT_NEAR(celsius(text), 25.0, 1e-9) << text;
  }
  EXPECT_NEAR(celsius("298 K"), 24.85, 1e-9);
  EXPECT_NEAR(celsius("-5 \u00B0C"), -5.0, 1e-9);
  EXPECT_EQ(codeOf(parseTemperature("-300 C")), "units.out_of_range");
  EXPECT_EQ(codeOf(parseTemperature("-1 K")), "units.out_of_range");
  EXPECT_EQ(codeOf(parseTemperature("77")), "units.missing_unit");
  EXPECT_EQ(codeOf(parseTemperature("77 \u00B0")), "units.missing_unit");
  EXPECT_NEAR(parseTemperature("77", TemperatureScale::Fahrenheit).value().celsius(), 25.0, 1e-9);
}

}  // namespace
}  // namespace cordreach::units
