// SPDX-License-Identifier: GPL-3.0-or-later
// Rounds and words numbers; the words themselves come from the book.
#include "text/quantity_text.h"

#include <array>
#include <cmath>
#include <cstdio>

namespace cordreach::text {

namespace {

constexpr double kMetresPerFoot = 0.3048;
constexpr double kSecondsPerMinute = 60.0;
constexpr double kSecondsPerHour = 3600.0;
constexpr const char* kMinus = "\u2212";

using base::Arguments;

// `unit.amperes` is "{n} A" with the narrow space between.
std::string with(const Phrasebook& book, std::string_view unitPhrase, std::string number) {
  return book.say(unitPhrase, {{"n", std::move(number)}});
}

std::string scaled(const Phrasebook& book, std::string_view unitPhrase, double value, bool oneDecimal) {
  return with(book, unitPhrase, numberText(book.locale(), value, oneDecimal ? 1 : 0));
}

// Whole numbers are what people hold in their heads; a small value would vanish in them.
bool tooSmallForWhole(double value, double limit) {
  return std::abs(value) < limit && std::abs(value - std::round(value)) > 0.05;
}

std::string lengthText(const Phrasebook& book, double metres) {
  if (book.locale().units == UnitSystem::Us) {
    const double feet = metres / kMetresPerFoot;
    return scaled(book, "unit.feet", feet, tooSmallForWhole(feet, 3.0));
  }
  return scaled(book, "unit.metres", metres, tooSmallForWhole(metres, 10.0));
}

std::string exactSpan(const Phrasebook& book, long minutes) {
  const long hours = minutes / 60;
  const long rest = minutes % 60;
  if (hours == 0) return with(book, "unit.minutes", std::to_string(rest));
  const std::string wholeHours = with(book, "unit.hours", std::to_string(hours));
  if (rest == 0) return wholeHours;
  return wholeHours + " " + with(book, "unit.minutes", std::to_string(rest));
}

std::string spanText(const Phrasebook& book, double seconds) {
  if (!std::isfinite(seconds)) return book.say("word.never");
  if (seconds > 0.0 && seconds < 0.95) return book.say("span.under_a_second");
  if (seconds < 9.95) return scaled(book, "unit.seconds", seconds, tooSmallForWhole(seconds, 10.0));
  if (seconds < 55.0) return scaled(book, "unit.seconds", seconds, false);
  const double minutes = seconds / kSecondsPerMinute;
  if (std::abs(minutes - std::round(minutes)) < 1e-9) return exactSpan(book, std::lround(minutes));
  if (minutes < 1.5) return book.say("span.a_minute");
  if (minutes < 90.0) return with(book, "span.minutes", std::to_string(std::lround(minutes)));
  const double hours = seconds / kSecondsPerHour;
  return with(book, "span.hours", numberText(book.locale(), std::round(hours * 2.0) / 2.0, hours < 10.0 ? 1 : 0));
}

std::string timeOfDayText(double seconds) {
  const long minutes = std::lround(seconds / kSecondsPerMinute) % (24 * 60);
  std::array<char, 16> text{};
  std::snprintf(text.data(), text.size(), "%02ld:%02ld", minutes / 60, minutes % 60);
  return text.data();
}

std::string gaugeText(const Phrasebook& book, double gauge) {
  const long number = std::lround(gauge);
  return with(book, "unit.awg", number > 0 ? std::to_string(number) : std::to_string(1 - number) + "/0");
}

std::string temperatureText(const Phrasebook& book, double celsius) {
  const bool us = book.locale().units == UnitSystem::Us;
  return scaled(book, us ? "unit.fahrenheit" : "unit.celsius", us ? celsius * 1.8 + 32.0 : celsius, false);
}

std::string riseText(const Phrasebook& book, double kelvin) {
  const bool us = book.locale().units == UnitSystem::Us;
  return scaled(book, us ? "unit.fahrenheit" : "unit.celsius", us ? kelvin * 1.8 : kelvin, false);
}

// As written by people: no trailing zeros, at most three decimals.
std::string bareText(const Locale& locale, double value) {
  for (int decimals = 0; decimals < 3; ++decimals) {
    const double power = std::pow(10.0, decimals);
    if (std::abs(value * power - std::round(value * power)) < 1e-6 * power) return numberText(locale, value, decimals);
  }
  return numberText(locale, value, 3);
}

bool endsWith(std::string_view text, std::string_view end) {
  return text.size() >= end.size() && text.substr(text.size() - end.size()) == end;
}

}  // namespace

std::string_view unitOf(std::string_view name) {
  const std::size_t at = name.rfind('_');
  return at == std::string_view::npos ? std::string_view{} : name.substr(at + 1);
}

std::string numberText(const Locale& locale, double value, int decimals) {
  std::array<char, 64> buffer{};
  std::snprintf(buffer.data(), buffer.size(), "%.*f", decimals, std::abs(value));
  std::string digits = buffer.data();
  std::string fraction;
  if (const std::size_t point = digits.find('.'); point != std::string::npos) {
    fraction = digits.substr(point + 1);
    digits.resize(point);
  }
  const bool isZero = (digits + fraction).find_first_not_of('0') == std::string::npos;
  for (std::size_t at = digits.size(); at > 3; at -= 3) digits.insert(at - 3, locale.thousandsMark);
  // "2.0" reads as a measured zero; people say 2.
  if (fraction == "0") fraction.clear();
  return (value < 0 && !isZero ? kMinus : "") + digits + (fraction.empty() ? "" : locale.decimalMark + fraction);
}

std::string quantityText(const Phrasebook& book, std::string_view name, double value, QuantityOptions options) {
  if (endsWith(name, "from_s") || endsWith(name, "until_s") || endsWith(name, "clock_s")) {
    return timeOfDayText(value);
  }
  const std::string_view unit = unitOf(name);
  if (unit == "s") return spanText(book, value);
  if (!std::isfinite(value)) return book.say("word.unknown");
  if (unit == "a") return scaled(book, "unit.amperes", value, options.decimal || tooSmallForWhole(value, 3.0));
  if (unit == "ma") return scaled(book, "unit.milliamperes", value, tooSmallForWhole(value, 10.0));
  if (unit == "v") return scaled(book, "unit.volts", value, options.decimal || tooSmallForWhole(value, 10.0));
  if (unit == "w") return scaled(book, "unit.watts", value, false);
  if (unit == "ohm") return with(book, "unit.ohms", bareText(book.locale(), value));
  if (unit == "c") return temperatureText(book, value);
  if (unit == "k") return riseText(book, value);
  if (unit == "m") return lengthText(book, value);
  if (unit == "mm2") return with(book, "unit.square_millimetres", bareText(book.locale(), value));
  if (unit == "awg") return gaugeText(book, value);
  if (unit == "h") return with(book, "unit.hours", bareText(book.locale(), value));
  if (unit == "percent") return scaled(book, "unit.percent", value, tooSmallForWhole(value, 3.0));
  if (unit == "rpm") return scaled(book, "unit.turns_a_minute", std::round(value / 10.0) * 10.0, false);
  return bareText(book.locale(), value);
}

}  // namespace cordreach::text
