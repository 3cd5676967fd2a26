// SPDX-License-Identifier: GPL-3.0-or-later
// Contrast by WCAG 2: text at least 4.5 to 1 on every ground it may stand on, lines that mean something 3 to 1.
#include "look/tokens.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "look/temperature_ramp.h"

namespace cordreach::look {
namespace {

using rules::Severity;

constexpr std::array kSeverities = {Severity::Ok, Severity::Notice, Severity::Caution, Severity::Warning,
                                    Severity::Danger};

double linear(double channel) {
  return channel <= 0.03928 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& c) {
  return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

double contrast(const QColor& a, const QColor& b) {
  const double x = luminance(a);
  const double y = luminance(b);
  return (std::max(x, y) + 0.05) / (std::min(x, y) + 0.05);
}

class EveryTheme : public ::testing::TestWithParam<Theme> {
 protected:
  const Tokens& t = tokensOf(GetParam());
};

TEST_P(EveryTheme, TextCanBeReadOnEveryGround) {
  for (const QColor& ground : {t.desk, t.sheet, t.room, t.well}) {
    for (const QColor& text : {t.ink, t.ink2, t.ink3}) EXPECT_GE(contrast(text, ground), 4.5);
  }
  EXPECT_GE(contrast(t.onButton, t.button), 4.5);
  EXPECT_GE(contrast(t.ink, t.selbg), 4.5);
  EXPECT_GE(contrast(t.link, t.sheet), 4.5);
}

TEST_P(EveryTheme, LinesThatMeanSomethingAreSeen) {
  for (const QColor& ground : {t.sheet, t.room}) {
    for (const QColor& line : {t.line, t.wall, t.select}) EXPECT_GE(contrast(line, ground), 3.0);
  }
}

TEST_P(EveryTheme, SeveritiesStandOutAndTheirWordsCanBeRead) {
  for (const Severity severity : kSeverities) {
    const SeverityColors colors = severityColors(severity, t.dark);
    EXPECT_GE(contrast(colors.onFill, colors.fill), 4.5);
    EXPECT_GE(contrast(colors.asText, t.sheet), 4.5);
    // Pale shapes are carried by their outline.
    EXPECT_GE(contrast(colors.outlined ? colors.onFill : colors.fill, t.sheet), 3.0);
  }
}

TEST_P(EveryTheme, TheRampIsSeenAtEveryTemperature) {
  for (double c = 0; c <= 120; c += 2.5) {
    EXPECT_GE(contrast(temperatureColor(units::Temperature::fromCelsius(c), t.dark), t.sheet), 3.0) << c;
  }
}

INSTANTIATE_TEST_SUITE_P(Themes, EveryTheme,
                         ::testing::Values(Theme{false, false}, Theme{true, false}, Theme{false, true},
                                           Theme{true, true}));

TEST(TemperatureRamp, GoesThroughItsStopsAndStaysAtItsEnds) {
  const auto at = [](double c, bool dark) { return temperatureColor(units::Temperature::fromCelsius(c), dark).name(); };
  EXPECT_EQ(at(20, false), "#3a9ac4");
  EXPECT_EQ(at(60, false), "#87478d");
  EXPECT_EQ(at(100, false), "#621705");
  EXPECT_EQ(at(-10, false), at(20, false));
  EXPECT_EQ(at(300, false), at(100, false));
  EXPECT_EQ(at(20, true), "#1e77a2");
  EXPECT_EQ(at(100, true), "#feefa1");
}

TEST(TemperatureRamp, GetsDarkerOnLightAndLighterOnDark) {
  for (double c = 20; c < 100; c += 1) {
    const auto now = units::Temperature::fromCelsius(c);
    const auto next = units::Temperature::fromCelsius(c + 1);
    EXPECT_GT(luminance(temperatureColor(now, false)), luminance(temperatureColor(next, false))) << c;
    EXPECT_LT(luminance(temperatureColor(now, true)), luminance(temperatureColor(next, true))) << c;
  }
}

}  // namespace
}  // namespace cordreach::look
