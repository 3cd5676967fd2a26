// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/site_text_forms.h"

#include <cmath>

namespace cordreach::io {
namespace {

std::optional<int> readWhole(std::string_view text) {
  int number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (text.empty() || error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  return number;
}

bool isDigit(char c) { return c >= '0' && c <= '9'; }

std::optional<int> readTwoDigits(std::string_view text) {
  if (text.size() != 2 || !isDigit(text[0]) || !isDigit(text[1])) return std::nullopt;
  return readWhole(text);
}

std::string twoDigits(long number) { return (number < 10 ? "0" : "") + std::to_string(number); }

std::optional<units::WireSize> readGauge(std::string_view text) {
  if (text.size() == 3 && text.substr(1) == "/0" && text[0] >= '1' && text[0] <= '4') {
    return units::WireSize::awg('1' - text[0]);
  }
  const auto number = readWhole(text);
  if (!number || *number < 1 || *number > units::WireSize::kLightestAwg) return std::nullopt;
  return units::WireSize::awg(*number);
}

std::optional<units::WireSize> readMetric(std::string_view text) {
  const auto area = readDecimal(text);
  if (!area || *area < site::kThinnestMm2 || *area > site::kThickestMm2) return std::nullopt;
  return units::WireSize::squareMillimetres(*area);
}

}  // namespace

std::string wireSizeText(const units::WireSize& size) {
  if (const auto gauge = size.awgNumber()) {
    return (*gauge > 0 ? std::to_string(*gauge) : std::to_string(1 - *gauge) + "/0") + " AWG";
  }
  return shortestText(size.metricMm2().value_or(0.0)) + " mm2";
}

std::optional<units::WireSize> readWireSize(std::string_view text) {
  const std::size_t space = text.find(' ');
  if (space == std::string_view::npos) return std::nullopt;
  const std::string_view unit = text.substr(space + 1);
  if (unit == "AWG") return readGauge(text.substr(0, space));
  if (unit == "mm2" || unit == "mm\u00b2") return readMetric(text.substr(0, space));
  return std::nullopt;
}

std::string timeOfDayText(units::Duration time) {
  CORDREACH_EXPECTS(std::isfinite(time.si()) && time.si() >= 0.0 && time.si() < 1e9);
  const long minutes = static_cast<long>(time.si() / 60.0);
  const std::string hoursAndMinutes = twoDigits(minutes / 60) + ":" + twoDigits(minutes % 60);
  const double seconds = time.si() - static_cast<double>(minutes) * 60.0;
  if (seconds == 0.0) return hoursAndMinutes;
  char text[400];  // in full, however small: there is no exponent in a time of day
  const auto end = std::to_chars(text, text + sizeof text, seconds, std::chars_format::fixed).ptr;
  return hoursAndMinutes + ":" + (seconds < 10.0 ? "0" : "") + std::string(text, end);
}

std::optional<units::Duration> readTimeOfDay(std::string_view text) {
  const std::size_t colon = text.find(':');
  if (colon == std::string_view::npos || colon < 1 || colon > 2) return std::nullopt;
  const auto hours = colon == 2 ? readTwoDigits(text.substr(0, 2)) : readWhole(text.substr(0, 1));
  const auto minutes = readTwoDigits(text.substr(colon + 1, 2));
  if (!hours || !minutes || *hours < 0 || *minutes > 59) return std::nullopt;
  const double wholeS = static_cast<double>(*hours) * 3600.0 + static_cast<double>(*minutes) * 60.0;
  const std::string_view rest = text.substr(colon + 3);
  if (rest.empty()) return units::Duration::fromSi(wholeS);
  const std::string_view digits = rest.substr(1);
  if (rest[0] != ':' || digits.size() < 2 || !readTwoDigits(digits.substr(0, 2))) return std::nullopt;
  if (digits.size() > 2 && digits[2] != '.') return std::nullopt;
  const auto seconds = readDecimal(digits);
  if (!seconds || *seconds >= 60.0) return std::nullopt;
  return units::Duration::fromSi(wholeS + *seconds);
}

std::string shortestText(double number) {
  CORDREACH_EXPECTS(std::isfinite(number));
  if (number == 0.0) return "0";  // a zero's sign says nothing
  char text[40];
  const auto end = std::to_chars(text, text + sizeof text, number).ptr;
  return std::string(text, end);
}

std::optional<double> readDecimal(std::string_view text) {
  double number = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (text.empty() || error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  if (!std::isfinite(number)) return std::nullopt;
  return number;
}

}  // namespace cordreach::io
