// SPDX-License-Identifier: GPL-3.0-or-later
// A number as people read it, by the unit that its name ends in: `rating_a` is "16 A", `length_m` "98 ft".
//   _a _ma _v _w _ohm   whole, one decimal where the value is small      _c   °F or °C, whole
//   _k                  a difference of temperature, in °F or °C         _m   feet or metres
//   _s                  a span: "40 s", "about 4 minutes", "8 min"       _awg "14 AWG", "1/0 AWG"
//   _percent            whole                                            _rpm to the next 10, in turns a minute
//   _mm2                "2.5 mm²"                                        _h   hours
//   from_s, until_s, clock_s     a time of day: "18:15"
// Anything else is the bare number.
#pragma once

#include <string>
#include <string_view>

#include "text/phrasebook.h"

namespace cordreach::text {

struct QuantityOptions {
  bool decimal = false;  // amps and volts with one decimal, because the decimal decides
};

[[nodiscard]] std::string quantityText(const Phrasebook& book, std::string_view name, double value,
                                       QuantityOptions options = {});

// "a" of "rating_a"; empty when the name has no underscore.
[[nodiscard]] std::string_view unitOf(std::string_view name);

// The number alone, with the locale's marks: "1,600", "−2.5".
[[nodiscard]] std::string numberText(const Locale& locale, double value, int decimals);

}  // namespace cordreach::text
