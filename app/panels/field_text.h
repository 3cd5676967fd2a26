// SPDX-License-Identifier: GPL-3.0-or-later
// Quantities to and from the text of a field: in the units people chose, exactly enough to be typed again, with the
// band of a guess behind it, "98 ft ± 10" or "98 ft (59–176)".
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/result.h"
#include "site/hours.h"
#include "site/known.h"
#include "text/phrasebook.h"
#include "units/quantity.h"
#include "units/temperature.h"
#include "units/wire_size.h"

namespace cordreach::app {

[[nodiscard]] std::string exactText(const text::Phrasebook& book, units::Length value);
[[nodiscard]] std::string exactText(const text::Phrasebook& book, units::Current value);
[[nodiscard]] std::string exactText(const text::Phrasebook& book, units::Voltage value);
[[nodiscard]] std::string exactText(const text::Phrasebook& book, units::Power value);
[[nodiscard]] std::string exactText(const text::Phrasebook& book, units::Resistance value);
[[nodiscard]] std::string exactText(const text::Phrasebook& book, units::Frequency value);  // turns a minute
[[nodiscard]] std::string exactText(const text::Phrasebook& book, units::Temperature value);
[[nodiscard]] std::string exactText(const text::Phrasebook& book, units::Duration value);
[[nodiscard]] std::string exactText(const text::Phrasebook& book, const units::WireSize& value);
[[nodiscard]] std::string exactText(const text::Phrasebook& book, int value);
[[nodiscard]] std::string exactText(const text::Phrasebook& book, double value);

// A number without unit is in the unit of the locale. Errors as of units/parse.h, with the text as place.
template <class T>
[[nodiscard]] base::Result<T> readText(const text::Phrasebook& book, std::string_view text);

// "18:00–19:15"; past midnight the end is earlier than the beginning.
[[nodiscard]] std::string hoursText(const site::Hours& hours);
[[nodiscard]] base::Result<site::Hours> readHours(std::string_view text);

// Without blanks at its ends, the narrow and no-break ones made plain.
[[nodiscard]] std::string tidied(std::string_view text);

struct BandText {
  std::string value;
  std::optional<std::string> low;
  std::optional<std::string> high;
};
// Error: field.bad_band.
[[nodiscard]] base::Result<BandText> splitBand(std::string_view text);

template <class T>
[[nodiscard]] std::string knownText(const text::Phrasebook& book, const site::Known<T>& known) {
  if (!known) return {};
  std::string shown = known->typed.empty() ? exactText(book, known->value) : known->typed;
  const auto typed = splitBand(shown);
  if (!known->isGuess() || (typed.ok() && typed.value().low)) return shown;
  return shown + " (" + exactText(book, *known->low) + "\u2013" + exactText(book, *known->high) + ")";
}

// Empty: unknown. What it was known by stays when the value does.
template <class T>
[[nodiscard]] base::Result<site::Known<T>> readKnown(const text::Phrasebook& book, std::string_view text,
                                                     const site::Known<T>& before) {
  const std::string typed = tidied(text);
  if (typed.empty()) return site::Known<T>{};
  if (typed == tidied(knownText(book, before))) return before;  // what is shown is often rounded
  auto band = splitBand(typed);
  if (!band.ok()) return band.error();
  auto value = readText<T>(book, band.value().value);
  if (!value.ok()) return value.error();
  site::Stated<T> stated{value.value(), {}, {}, typed, {}, {}, {}};
  if (band.value().low) {
    auto low = readText<T>(book, *band.value().low);
    auto high = readText<T>(book, *band.value().high);
    if (!low.ok() || !high.ok() || !(low.value() <= stated.value && stated.value <= high.value())) {
      return base::Error{"field.bad_band", typed, {}};
    }
    stated.low = low.value();
    stated.high = high.value();
  }
  if (before && before->value == stated.value && before->low == stated.low && before->high == stated.high) {
    stated.how = before->how;
    stated.who = before->who;
    stated.when = before->when;
  }
  return site::Known<T>{stated};
}

}  // namespace cordreach::app
