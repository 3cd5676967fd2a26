// SPDX-License-Identifier: GPL-3.0-or-later
// A clock time, to the minute. The end of the day, 24:00, is one too, because spans of time are half-open.
#pragma once

#include <compare>
#include <string>
#include <string_view>

#include "base/result.h"

namespace cordreach::units {

class TimeOfDay {
 public:
  // 0 to 1440; anything else is our own bug.
  [[nodiscard]] static TimeOfDay fromMinutes(int sinceMidnight);
  [[nodiscard]] int minutes() const { return m_minutes; }
  // `18:15`, always of five characters.
  [[nodiscard]] std::string plain() const;

  friend bool operator==(const TimeOfDay&, const TimeOfDay&) = default;
  friend auto operator<=>(const TimeOfDay&, const TimeOfDay&) = default;

 private:
  explicit TimeOfDay(int minutes) : m_minutes(minutes) {}
  int m_minutes;
};

// `18:15`, `6:15`, `18h15`, `6:15 pm`, `6pm`, `24:00`. A bare `6` could mean either half of the day: refused.
// Errors: units.empty, units.not_a_time, both with the text as place.
[[nodiscard]] base::Result<TimeOfDay> parseTimeOfDay(std::string_view text);

}  // namespace cordreach::units
