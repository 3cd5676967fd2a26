// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/field_text.h"

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <utility>

#include "text/quantity_text.h"
#include "units/parse.h"
#include "units/time_of_day.h"

namespace cordreach::app {

namespace {

using text::Phrasebook;

// As few decimals as say the number to one part in ten thousand, and no thousands mark, which could be misread.
// Never three decimals: "3.609" could be read as a large number.
std::string numberOf(const Phrasebook& book, double value, double tolerance = 1e-4) {
  text::Locale locale = book.locale();
  locale.thousandsMark.clear();
  for (const int decimals : {0, 1, 2}) {
    const double power = std::pow(10.0, decimals);
    if (std::abs(std::round(value * power) / power - value) <= tolerance * std::abs(value) + 1e-9) {
      return text::numberText(locale, value, decimals);
    }
  }
  return text::numberText(locale, value, 4);
}

std::string with(const Phrasebook& book, std::string_view phrase, double value, double tolerance = 1e-4) {
  return book.say(phrase, {{"n", numberOf(book, value, tolerance)}});
}

bool isUs(const Phrasebook& book) { return book.locale().units == text::UnitSystem::Us; }

struct Scaled {
  std::string number;
  std::string unit;
};

bool isNumberByte(char c) { return (c >= '0' && c <= '9') || c == '.' || c == ','; }

// "98 ft" as "98" and " ft"; a sign may stand before.
Scaled split(std::string_view text) {
  std::size_t at = !text.empty() && text.front() == '-' ? 1 : 0;
  while (at < text.size() && isNumberByte(text[at])) ++at;
  return {std::string(text.substr(0, at)), std::string(text.substr(at))};
}

std::optional<double> numberIn(std::string text) {
  for (char& c : text) c = c == ',' ? '.' : c;
  if (text.empty()) return std::nullopt;
  char* end = nullptr;
  const double value = std::strtod(text.c_str(), &end);
  if (end != text.c_str() + text.size() || !std::isfinite(value)) return std::nullopt;
  return value;
}

std::string plain(double value) {
  std::array<char, 40> buffer{};
  std::snprintf(buffer.data(), buffer.size(), "%.6f", value);
  return buffer.data();
}

base::Error badBand(std::string_view text) { return {"field.bad_band", std::string(text), {}}; }

std::optional<std::pair<std::size_t, std::size_t>> plusMinus(std::string_view text) {
  for (const std::string_view mark : {"\u00b1", "+/-", "+-"}) {
    if (const auto at = text.find(mark); at != std::string_view::npos) return std::pair{at, mark.size()};
  }
  return std::nullopt;
}

base::Result<BandText> aroundValue(std::string_view whole, std::string_view value, std::string_view width) {
  const Scaled middle = split(value);
  const Scaled half = split(width);
  const auto centre = numberIn(middle.number);
  const auto reach = numberIn(half.number);
  if (!centre || !reach || (!half.unit.empty() && tidied(half.unit) != tidied(middle.unit))) return badBand(whole);
  return BandText{std::string(value), plain(*centre - *reach) + middle.unit, plain(*centre + *reach) + middle.unit};
}

base::Result<BandText> fromTo(std::string_view whole, std::string_view value, std::string_view inside) {
  constexpr std::string_view kDash = "\u2013";
  auto dash = inside.find(kDash);
  std::size_t width = kDash.size();
  if (dash == std::string_view::npos) {
    dash = inside.find('-', 1);
    width = 1;
  }
  if (dash == std::string_view::npos) return badBand(whole);
  const std::string unit = split(value).unit;
  const auto complete = [&](std::string_view part) {
    std::string text = tidied(part);
    return split(text).unit.empty() ? text + unit : text;
  };
  return BandText{std::string(value), complete(inside.substr(0, dash)), complete(inside.substr(dash + width))};
}

struct BareUnit {
  std::string_view word;
  double scale;
};

// For what the parsers of units have no verb for: a number and one of some words, or none.
base::Result<double> scaledNumber(std::string_view text, std::initializer_list<BareUnit> units) {
  const std::string whole = tidied(text);
  if (whole.empty()) return base::Error{"units.empty", "", {}};
  const Scaled parts = split(whole);
  const auto number = numberIn(parts.number);
  if (!number) return base::Error{"units.not_a_number", whole, {}};
  if (*number < 0.0) return base::Error{"units.negative", whole, {}};
  const std::string unit = tidied(parts.unit);
  for (const BareUnit& known : units) {
    if (unit == known.word) return *number * known.scale;
  }
  return base::Error{"units.unknown_unit", whole, {{"unit", unit}}};
}

constexpr double kLengthTolerance = 2e-3;  // no tape is read closer
constexpr double kDayS = 24.0 * 3600.0;

}  // namespace

std::string exactText(const Phrasebook& book, units::Length value) {
  return isUs(book) ? with(book, "unit.feet", value.in(units::foot), kLengthTolerance)
                    : with(book, "unit.metres", value.si(), kLengthTolerance);
}
std::string exactText(const Phrasebook& book, units::Current value) { return with(book, "unit.amperes", value.si()); }
std::string exactText(const Phrasebook& book, units::Voltage value) { return with(book, "unit.volts", value.si()); }
std::string exactText(const Phrasebook& book, units::Power value) { return with(book, "unit.watts", value.si()); }
std::string exactText(const Phrasebook& book, units::Resistance value) { return with(book, "unit.ohms", value.si()); }
std::string exactText(const Phrasebook& book, units::Frequency value) {
  return with(book, "field.unit.rpm", value.si() * 60.0);
}
std::string exactText(const Phrasebook& book, units::Temperature value) {
  return isUs(book) ? with(book, "unit.fahrenheit", value.fahrenheit()) : with(book, "unit.celsius", value.celsius());
}
std::string exactText(const Phrasebook& book, units::Duration value) {
  return value.si() >= 60.0 ? with(book, "unit.minutes", value.si() / 60.0) : with(book, "unit.seconds", value.si());
}
std::string exactText(const Phrasebook& book, const units::WireSize& value) {
  if (const auto gauge = value.awgNumber()) {
    return text::quantityText(book, "size_awg", static_cast<double>(*gauge));
  }
  return with(book, "unit.square_millimetres", *value.metricMm2());
}
std::string exactText(const Phrasebook&, int value) { return std::to_string(value); }
std::string exactText(const Phrasebook& book, double value) { return numberOf(book, value); }

template <>
base::Result<units::Length> readText<units::Length>(const Phrasebook& book, std::string_view text) {
  return units::parseLength(text, isUs(book) ? units::foot : units::metre);
}
template <>
base::Result<units::Current> readText<units::Current>(const Phrasebook&, std::string_view text) {
  return units::parseCurrent(text, units::ampere);
}
template <>
base::Result<units::Voltage> readText<units::Voltage>(const Phrasebook&, std::string_view text) {
  return units::parseVoltage(text, units::volt);
}
template <>
base::Result<units::Power> readText<units::Power>(const Phrasebook&, std::string_view text) {
  return units::parsePower(text, units::watt);
}
template <>
base::Result<units::Duration> readText<units::Duration>(const Phrasebook&, std::string_view text) {
  return units::parseDuration(text, units::minute);
}
template <>
base::Result<units::Temperature> readText<units::Temperature>(const Phrasebook& book, std::string_view text) {
  return units::parseTemperature(text,
                                 isUs(book) ? units::TemperatureScale::Fahrenheit : units::TemperatureScale::Celsius);
}
template <>
base::Result<units::WireSize> readText<units::WireSize>(const Phrasebook&, std::string_view text) {
  return units::parseWireSize(text);
}
template <>
base::Result<units::Resistance> readText<units::Resistance>(const Phrasebook&, std::string_view text) {
  auto ohms = scaledNumber(text, {{"", 1.0}, {"ohm", 1.0}, {"ohms", 1.0}, {"\u03a9", 1.0}, {"m\u03a9", 1e-3}});
  if (!ohms.ok()) return ohms.error();
  return ohms.value() * units::ohm;
}
template <>
base::Result<units::Frequency> readText<units::Frequency>(const Phrasebook&, std::string_view text) {
  auto rpm = scaledNumber(text, {{"", 1.0}, {"rpm", 1.0}, {"r/min", 1.0}, {"1/min", 1.0}});
  if (!rpm.ok()) return rpm.error();
  return rpm.value() / 60.0 * units::hertz;
}
template <>
base::Result<double> readText<double>(const Phrasebook&, std::string_view text) {
  return scaledNumber(text, {{"", 1.0}});
}
template <>
base::Result<int> readText<int>(const Phrasebook&, std::string_view text) {
  auto number = scaledNumber(text, {{"", 1.0}});
  if (!number.ok()) return number.error();
  if (number.value() != std::floor(number.value()) || number.value() > 1e6) {
    return base::Error{"field.not_whole", tidied(text), {}};
  }
  return static_cast<int>(number.value());
}

std::string hoursText(const site::Hours& hours) {
  const auto clock = [](units::Duration time) {
    const auto minutes = static_cast<int>(std::lround(time.si() / 60.0));
    return units::TimeOfDay::fromMinutes(minutes > 24 * 60 ? minutes % (24 * 60) : minutes).plain();
  };
  return clock(hours.from) + "\u2013" + clock(hours.until);
}

base::Result<site::Hours> readHours(std::string_view text) {
  const std::string whole = tidied(text);
  constexpr std::string_view kDash = "\u2013";
  std::size_t width = kDash.size();
  auto at = whole.find(kDash);
  for (const std::string_view mark : {"-", " to ", " a "}) {
    if (at != std::string::npos) break;
    at = whole.find(mark);
    width = mark.size();
  }
  if (at == std::string::npos) return base::Error{"field.bad_hours", whole, {}};
  const auto from = units::parseTimeOfDay(tidied(whole.substr(0, at)));
  const auto until = units::parseTimeOfDay(tidied(whole.substr(at + width)));
  if (!from.ok() || !until.ok()) return base::Error{"field.bad_hours", whole, {}};
  if (from.value() == until.value()) return base::Error{"field.bad_hours", whole, {}};
  const double fromS = from.value().minutes() * 60.0;
  double untilS = until.value().minutes() * 60.0;
  if (untilS < fromS) untilS += kDayS;
  return site::Hours{fromS * units::second, untilS * units::second};
}

std::string tidied(std::string_view text) {
  std::string plainText;
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (text.substr(at, 3) == "\u202f") {
      plainText += ' ';
      at += 2;
    } else if (text.substr(at, 2) == "\u00a0") {
      plainText += ' ';
      at += 1;
    } else {
      plainText += text[at];
    }
  }
  const auto first = plainText.find_first_not_of(" \t\r\n");
  if (first == std::string::npos) return {};
  return plainText.substr(first, plainText.find_last_not_of(" \t\r\n") - first + 1);
}

base::Result<BandText> splitBand(std::string_view text) {
  const std::string whole = tidied(text);
  if (const auto mark = plusMinus(whole)) {
    return aroundValue(whole, tidied(whole.substr(0, mark->first)), tidied(whole.substr(mark->first + mark->second)));
  }
  const auto open = whole.find('(');
  if (open == std::string::npos) return BandText{whole, {}, {}};
  if (open == 0 || whole.back() != ')') return badBand(whole);
  return fromTo(whole, tidied(whole.substr(0, open)), tidied(whole.substr(open + 1, whole.size() - open - 2)));
}

}  // namespace cordreach::app
