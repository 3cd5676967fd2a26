// SPDX-License-Identifier: GPL-3.0-or-later
// Values that stand in a site file as text: wire sizes, times of day, the shortest number that reads back the same.
#pragma once

#include <charconv>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>

#include "base/contract.h"
#include "site/file_form.h"
#include "units/quantity.h"
#include "units/wire_size.h"

namespace cordreach::io {

// "14 AWG", "2/0 AWG", "2.5 mm2".
[[nodiscard]] std::string wireSizeText(const units::WireSize& size);
[[nodiscard]] std::optional<units::WireSize> readWireSize(std::string_view text);

// "18:15", "18:15:30", "18:15:30.5"; hours go on past 24.
[[nodiscard]] std::string timeOfDayText(units::Duration time);
[[nodiscard]] std::optional<units::Duration> readTimeOfDay(std::string_view text);

// The shortest decimal that reads as exactly this double, which must be finite.
[[nodiscard]] std::string shortestText(double number);
[[nodiscard]] std::optional<double> readDecimal(std::string_view text);

// The shortest decimal in the file's unit from which exactly this quantity is made again: 25 and not
// 24.999999999999943, though neither 25 °C in kelvin nor 1600/min in hertz is a round double.
template <class Q>
[[nodiscard]] std::string shortestText(const Q& value) {
  using Form = site::FileForm<Q>;
  const double number = Form::toFile(value);
  if constexpr (std::is_base_of_v<site::SiForm<Q>, Form>) return shortestText(number);
  for (int digits = 1; digits <= 17; ++digits) {
    char text[40];
    const auto end = std::to_chars(text, text + sizeof text, number, std::chars_format::general, digits).ptr;
    const auto back = readDecimal({text, static_cast<std::size_t>(end - text)});
    if (back && Form::fromFile(*back) == value) return shortestText(*back);
  }
  return shortestText(number);
}

}  // namespace cordreach::io
