// SPDX-License-Identifier: GPL-3.0-or-later
// What people type, as quantities: both unit systems, decimal point or comma, English and Spanish unit words.
// Errors carry the text as their place: units.empty, units.not_a_number, units.ambiguous_number (`1,500`),
// units.missing_unit, units.unknown_unit {unit}, units.negative, units.out_of_range.
// `bare` is the unit of a number that has none; without it such a number is units.missing_unit.
#pragma once

#include <optional>
#include <string_view>

#include "base/result.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::units {

// `75 ft`, `75'`, `5 ft 6 in`, `5'6"`, `22,5 m`, `150 mm`, `25 cm`, `10 yd`. 0 to 100 km.
[[nodiscard]] base::Result<Length> parseLength(std::string_view text, std::optional<Length> bare = std::nullopt);

// `15 A`, `15amps`, `600 mA`. 0 to 1 MA.
[[nodiscard]] base::Result<Current> parseCurrent(std::string_view text, std::optional<Current> bare = std::nullopt);

// `120 V`, `120VAC`, `11 kV`. 0 to 1 MV.
[[nodiscard]] base::Result<Voltage> parseVoltage(std::string_view text, std::optional<Voltage> bare = std::nullopt);

// `1.5 hp`, `1 1/2 HP` (550 ft lbf/s), `1500 W`, `1.5 kW`. 0 to 1 GW.
[[nodiscard]] base::Result<Power> parsePower(std::string_view text, std::optional<Power> bare = std::nullopt);

// `2h`, `90 min`, `45s`, `1h30`, `1 h 30 min 5 s`; parts after the first are below 60. 0 to 10 years.
[[nodiscard]] base::Result<Duration> parseDuration(std::string_view text, std::optional<Duration> bare = std::nullopt);

enum class TemperatureScale { Celsius, Fahrenheit, Kelvin };

// `77 °F`, `77F`, `25C`, `-5 °C`, `298 K`. 0 K to 5000 K.
[[nodiscard]] base::Result<Temperature> parseTemperature(std::string_view text,
                                                         std::optional<TemperatureScale> bare = std::nullopt);

}  // namespace cordreach::units
