// SPDX-License-Identifier: GPL-3.0-or-later
// The grammar of --cord, --machine and --lay.
#include "console/arguments.h"

#include <gtest/gtest.h>

#include "units/temperature.h"

namespace cordreach::console {
namespace {

TEST(CordArgument, ReadsThePrintAndTheLengthInAnyOrder) {
  for (const char* text : {"SJTW 16/3 50ft", "50ft SJTW 16/3", "16/3 sjtw 50 ft", "SJTW 16/3 60C 300V 15.24m"}) {
    const auto cord = parseCordArgument(text);
    ASSERT_TRUE(cord.ok()) << text;
    EXPECT_EQ(cord.value().type, "SJTW") << text;
    EXPECT_EQ(cord.value().size->value, units::WireSize::awg(16)) << text;
    EXPECT_EQ(cord.value().conductors->value, 3) << text;
    EXPECT_NEAR(cord.value().length->value.si(), 15.24, 1e-9) << text;
  }
}

TEST(CordArgument, KeepsATemperatureThatIsPrinted) {
  EXPECT_NEAR(parseCordArgument("SJTW 14/3 105C 25ft").value().rating->value.celsius(), 105.0, 1e-9);
  EXPECT_FALSE(parseCordArgument("SJTW 14/3 25ft").value().rating);
}

TEST(CordArgument, RefusesWhatItCannotUse) {
  EXPECT_EQ(parseCordArgument("SJTW 16/3").error().code, "console.no_cord_length");
  EXPECT_EQ(parseCordArgument("SJTW 50ft").error().code, "console.no_cord_size");
  EXPECT_EQ(parseCordArgument("SJTW 16/3 0ft").error().code, "console.zero");
  EXPECT_EQ(parseCordArgument("SJTW 16/3 purple 50ft").error().code, "console.unexpected_word");
  EXPECT_FALSE(parseCordArgument("").ok());
}

TEST(MachineArgument, ReadsPlateClassAndOwnCordInAnyOrder) {
  for (const char* text : {"15A induction 14AWG/50ft", "induction 14AWG/50ft 15 A", "50ft/14AWG 15A INDUCTION"}) {
    const auto machine = parseMachineArgument(text);
    ASSERT_TRUE(machine.ok()) << text;
    EXPECT_EQ(machine.value().loadClass, tables::LoadClass::Induction) << text;
    EXPECT_NEAR(machine.value().plate->value.si(), 15.0, 1e-9) << text;
    EXPECT_EQ(machine.value().cord.size->value, units::WireSize::awg(14)) << text;
    EXPECT_NEAR(machine.value().cord.length->value.si(), 15.24, 1e-9) << text;
  }
}

TEST(MachineArgument, KnowsTheFiveClassWords) {
  const auto classOf = [](const std::string& word) {
    return parseMachineArgument("9A " + word + " 16AWG/30ft").value().loadClass;
  };
  EXPECT_EQ(classOf("dc"), tables::LoadClass::RectifiedDc);
  EXPECT_EQ(classOf("universal"), tables::LoadClass::Universal);
  EXPECT_EQ(classOf("heat"), tables::LoadClass::Resistance);
  EXPECT_EQ(classOf("electronic"), tables::LoadClass::Electronic);
}

TEST(MachineArgument, RefusesWhatIsMissingOrTooMuch) {
  EXPECT_EQ(parseMachineArgument("induction 14AWG/50ft").error().code, "console.no_amps");
  EXPECT_EQ(parseMachineArgument("15A 14AWG/50ft").error().code, "console.no_class");
  EXPECT_EQ(parseMachineArgument("15A induction").error().code, "console.no_machine_cord");
  EXPECT_EQ(parseMachineArgument("15A 16A induction 14AWG/50ft").error().code, "console.unexpected_word");
  EXPECT_EQ(parseMachineArgument("15A induction dc 14AWG/50ft").error().code, "console.unexpected_word");
  EXPECT_EQ(parseMachineArgument("0A induction 14AWG/50ft").error().code, "console.zero");
  EXPECT_FALSE(parseMachineArgument("15A induction 14AWG/50parsecs").ok());
}

TEST(LayingArgument, KnowsSixWaysToLie) {
  EXPECT_EQ(parseLaying("Coiled").value(), tables::Laying::Coiled);
  EXPECT_EQ(parseLaying("floor").value(), tables::Laying::Floor);
  EXPECT_EQ(parseLaying("hammock").error().code, "console.no_such_laying");
}

TEST(ReadingArgument, ReadsSurfaceAmpsAirAndLaying) {
  const auto air = units::Temperature::fromCelsius(20.0);
  const auto bare = parseReadingArgument("48C at 13A", air).value();
  EXPECT_NEAR(bare.surface.celsius(), 48.0, 1e-9);
  EXPECT_NEAR(bare.current.in(units::ampere), 13.0, 1e-9);
  EXPECT_NEAR(bare.air.celsius(), 20.0, 1e-9);
  EXPECT_EQ(bare.laying, tables::Laying::Floor);
  const auto coil = parseReadingArgument("118 F at 13 A in 77 F coiled 12", air).value();
  EXPECT_NEAR(coil.surface.celsius(), 47.78, 0.01);
  EXPECT_NEAR(coil.air.celsius(), 25.0, 1e-6);
  EXPECT_EQ(coil.laying, tables::Laying::Coiled);
  EXPECT_EQ(coil.turns, 12.0);
}

TEST(ReadingArgument, RefusesWhatSaysNothing) {
  const auto air = units::Temperature::fromCelsius(25.0);
  for (const char* text : {"", "48C", "48C 13A", "48C at 13A hammock", "48C at 13A coiled 0", "48C at 13A in"}) {
    EXPECT_EQ(parseReadingArgument(text, air).error().code, "console.reading_words") << text;
  }
  EXPECT_EQ(parseReadingArgument("25C at 13A", air).error().code, "console.reading_not_warm");
  EXPECT_EQ(parseReadingArgument("48C at 0A", air).error().code, "console.zero");
  EXPECT_FALSE(parseReadingArgument("hot at 13A", air).ok());
  EXPECT_FALSE(parseReadingArgument("48C at much", air).ok());
}

}  // namespace
}  // namespace cordreach::console
