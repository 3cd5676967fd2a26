// SPDX-License-Identifier: GPL-3.0-or-later
// Clock times as typed.
#include "units/time_of_day.h"

#include <charconv>
#include <optional>

#include "base/contract.h"
#include "units/excerpt.h"
#include "units/scanner.h"

namespace cordreach::units {
namespace {

constexpr int kMinutesADay = 24 * 60;

// One or two digits taken off the front of `text`.
std::optional<int> takeDigits(std::string_view& text) {
  const auto length = std::min(text.find_first_not_of("0123456789"), text.size());
  if (length < 1 || length > 2) return std::nullopt;
  int value = 0;
  std::from_chars(text.data(), text.data() + length, value);
  text.remove_prefix(length);
  return value;
}

enum class Half { None, Morning, Afternoon };

std::optional<Half> halfSpelled(std::string_view word) {
  if (word.empty()) return Half::None;
  if (word == "am" || word == "a.m." || word == "a" || word == "a. m.") return Half::Morning;
  if (word == "pm" || word == "p.m." || word == "p" || word == "p. m.") return Half::Afternoon;
  return std::nullopt;
}

std::optional<int> minutesOf(std::string_view text) {
  const auto hours = takeDigits(text);
  if (!hours) return std::nullopt;
  int minutes = 0;
  const bool withMinutes = text.starts_with(':') || text.starts_with('h');
  if (withMinutes) {
    text.remove_prefix(1);
    const bool twoDigits = text.size() >= 2 && text[1] >= '0' && text[1] <= '9';
    const auto read = takeDigits(text);
    if (!read || !twoDigits || *read > 59) return std::nullopt;
    minutes = *read;
  }
  text.remove_prefix(std::min(text.find_first_not_of(' '), text.size()));
  const auto half = halfSpelled(text);
  if (!half) return std::nullopt;
  if (*half == Half::None) {
    const int total = *hours * 60 + minutes;
    return withMinutes && total <= kMinutesADay ? std::optional(total) : std::nullopt;
  }
  if (*hours < 1 || *hours > 12) return std::nullopt;
  return (*hours % 12 + (*half == Half::Afternoon ? 12 : 0)) * 60 + minutes;
}

}  // namespace

TimeOfDay TimeOfDay::fromMinutes(int sinceMidnight) {
  CORDREACH_EXPECTS(sinceMidnight >= 0 && sinceMidnight <= kMinutesADay);
  return TimeOfDay(sinceMidnight);
}

std::string TimeOfDay::plain() const {
  const auto twoDigits = [](int value) { return (value < 10 ? "0" : "") + std::to_string(value); };
  return twoDigits(m_minutes / 60) + ":" + twoDigits(m_minutes % 60);
}

base::Result<TimeOfDay> parseTimeOfDay(std::string_view text) {
  const auto from = text.find_first_not_of(" \t\r\n");
  if (from == std::string_view::npos) return base::Error{"units.empty", excerpt(text), {}};
  const auto to = text.find_last_not_of(" \t\r\n");
  const auto minutes = minutesOf(folded(text.substr(from, to - from + 1)));
  if (!minutes) return base::Error{"units.not_a_time", excerpt(text), {}};
  return TimeOfDay::fromMinutes(*minutes);
}

}  // namespace cordreach::units
