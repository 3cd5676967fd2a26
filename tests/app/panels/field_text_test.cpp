// SPDX-License-Identifier: GPL-3.0-or-later
// Quantities as the text of a field and back.
#include "panels/field_text.h"

#include <gtest/gtest.h>

#include "app/panels/support.h"

namespace cordreach::app {
namespace {

using testing::english;
using units::foot;

template <class T>
site::Stated<T> read(const std::string& text, const site::Known<T>& before = {}) {
  const auto known = readKnown<T>(english(), text, before);
  if (!known.ok() || !known.value()) throw std::runtime_error(text + ": " + known.error().code);
  return *known.value();
}

template <class T>
std::string codeOf(const std::string& text) {
  const auto known = readKnown<T>(english(), text, {});
  return known.ok() ? "" : known.error().code;
}

TEST(FieldText, KeepsWhatWasTyped) {
  const auto length = read<units::Length>(" 22 m ");
  EXPECT_DOUBLE_EQ(length.value.si(), 22.0);
  EXPECT_EQ(length.typed, "22 m");
  EXPECT_EQ(knownText(english(), site::Known<units::Length>(length)), "22 m");
}

TEST(FieldText, ReadsABandAsAGuess) {
  const auto around = read<units::Length>("98 ft \u00b1 10");
  EXPECT_NEAR(around.value.in(foot), 98.0, 1e-9);
  EXPECT_NEAR(around.low->in(foot), 88.0, 1e-6);
  EXPECT_NEAR(around.high->in(foot), 108.0, 1e-6);
  const auto fromTo = read<units::Length>("98 ft (59-176)");
  EXPECT_NEAR(fromTo.low->in(foot), 59.0, 1e-9);
  EXPECT_NEAR(fromTo.high->in(foot), 176.0, 1e-9);
  const auto warm = read<units::Temperature>("77 \u00b0F +- 9");
  EXPECT_NEAR(warm.low->celsius(), 20.0, 1e-6);
  EXPECT_NEAR(warm.high->celsius(), 30.0, 1e-6);
}

TEST(FieldText, RefusesABandThatDoesNotHoldItsValue) {
  EXPECT_EQ(codeOf<units::Length>("98 ft (100-120)"), "field.bad_band");
  EXPECT_EQ(codeOf<units::Length>("98 ft \u00b1 much"), "field.bad_band");
  EXPECT_EQ(codeOf<units::Length>("98 ft \u00b1 2 m"), "field.bad_band");
  EXPECT_EQ(codeOf<units::Length>("98 ft (59"), "field.bad_band");
}

TEST(FieldText, ShowsAGuessThatNobodyTyped) {
  site::Stated<units::Length> guess{30.0 * units::metre, 18.0 * units::metre, 54.0 * units::metre, {}, {}, {}, {}};
  const std::string shown = knownText(english(text::UnitSystem::Metric), site::Known<units::Length>(guess));
  const auto again = readKnown<units::Length>(english(text::UnitSystem::Metric), shown, {});
  ASSERT_TRUE(again.ok()) << shown;
  EXPECT_DOUBLE_EQ(again.value()->value.si(), 30.0);
  EXPECT_DOUBLE_EQ(again.value()->low->si(), 18.0);
  EXPECT_DOUBLE_EQ(again.value()->high->si(), 54.0);
}

TEST(FieldText, IsExactEnoughToBeTypedAgainInBothUnitSystems) {
  for (const auto units : {text::UnitSystem::Us, text::UnitSystem::Metric}) {
    const auto& book = english(units);
    const auto sameLength = readText<units::Length>(book, exactText(book, 17.3736 * units::metre));
    ASSERT_TRUE(sameLength.ok());
    EXPECT_NEAR(sameLength.value().si(), 17.3736, 0.002 * 17.3736);
    const auto sameAmps = readText<units::Current>(book, exactText(book, 14.6 * units::ampere));
    ASSERT_TRUE(sameAmps.ok());
    EXPECT_DOUBLE_EQ(sameAmps.value().si(), 14.6);
    const auto sameWatts = readText<units::Power>(book, exactText(book, 1044.0 * units::watt));
    ASSERT_TRUE(sameWatts.ok());
    EXPECT_DOUBLE_EQ(sameWatts.value().si(), 1044.0);
    const auto sameSpeed = readText<units::Frequency>(book, exactText(book, 1600.0 / 60.0 * units::hertz));
    ASSERT_TRUE(sameSpeed.ok());
    EXPECT_NEAR(sameSpeed.value().si(), 1600.0 / 60.0, 1e-9);
    const auto sameAir = readText<units::Temperature>(book, exactText(book, units::Temperature::fromCelsius(24.0)));
    ASSERT_TRUE(sameAir.ok());
    EXPECT_NEAR(sameAir.value().celsius(), 24.0, 0.01);
    const auto sameOhms = readText<units::Resistance>(book, exactText(book, 0.06 * units::ohm));
    ASSERT_TRUE(sameOhms.ok());
    EXPECT_NEAR(sameOhms.value().si(), 0.06, 1e-6);
  }
}

TEST(FieldText, TakesANumberWithoutUnitInTheUnitsOfTheLocale) {
  EXPECT_NEAR(read<units::Length>("75").value.in(foot), 75.0, 1e-9);
  EXPECT_DOUBLE_EQ(readText<units::Length>(english(text::UnitSystem::Metric), "22").value().si(), 22.0);
  EXPECT_DOUBLE_EQ(read<units::Current>("15A").value.si(), 15.0);
}

TEST(FieldText, ReadsHoursPastMidnightAndRefusesWhatIsNone) {
  const auto shift = readHours("22:00 to 06:00");
  ASSERT_TRUE(shift.ok());
  EXPECT_DOUBLE_EQ(shift.value().from.si(), 22.0 * 3600.0);
  EXPECT_DOUBLE_EQ(shift.value().until.si(), 30.0 * 3600.0);
  EXPECT_EQ(hoursText(shift.value()), "22:00\u201306:00");
  EXPECT_EQ(readHours(hoursText(shift.value())).value(), shift.value());
  for (const char* bad : {"", "18:00", "18:00-", "18:00-18:00", "six to ten"}) {
    EXPECT_EQ(readHours(bad).ok() ? "" : readHours(bad).error().code, "field.bad_hours") << bad;
  }
}

TEST(FieldText, KeepsHowAValueIsKnownWhileItStaysTheSame) {
  site::Known<units::Length> paced = site::known(75.0 * foot);
  paced->how = "paced";
  EXPECT_EQ(read<units::Length>("75 ft", paced).how, "paced");
  EXPECT_EQ(read<units::Length>("76 ft", paced).how, "");
}

}  // namespace
}  // namespace cordreach::app
