// SPDX-License-Identifier: GPL-3.0-or-later
// Temperatures: the zero moves with the unit, so they are read apart from other quantities.
#include <array>

#include "units/excerpt.h"
#include "units/parse.h"
#include "units/scanner.h"
#include "units/unit_word.h"

namespace cordreach::units {
namespace {

constexpr double kHighestK = 5000.0;

// The degree sign, the look-alike ordinal sign of Spanish keyboards, and `deg` say nothing that the letter does not.
std::string withoutDegree(std::string word) {
  for (const std::string_view sign : {"\u00B0", "\u00BA", "degrees", "degree", "deg", "grados", "grado"}) {
    if (!word.starts_with(sign)) continue;
    word.erase(0, sign.size());
    while (!word.empty() && (word.front() == ' ' || word.front() == '.')) word.erase(0, 1);
    break;
  }
  return word;
}

constexpr std::array<UnitWord<TemperatureScale>, 6> kScales{{{"c", TemperatureScale::Celsius},
                                                             {"celsius", TemperatureScale::Celsius},
                                                             {"f", TemperatureScale::Fahrenheit},
                                                             {"fahrenheit", TemperatureScale::Fahrenheit},
                                                             {"k", TemperatureScale::Kelvin},
                                                             {"kelvin", TemperatureScale::Kelvin}}};

Temperature onScale(double value, TemperatureScale scale) {
  switch (scale) {
    case TemperatureScale::Celsius:
      return Temperature::fromCelsius(value);
    case TemperatureScale::Fahrenheit:
      return Temperature::fromFahrenheit(value);
    case TemperatureScale::Kelvin:
      break;
  }
  return Temperature::fromKelvin(value);
}

}  // namespace

base::Result<Temperature> parseTemperature(std::string_view text, std::optional<TemperatureScale> bare) {
  Scanner scanner(text);
  const auto number = scanner.number();
  if (!number) return number.error();
  const std::string word = withoutDegree(scanner.word());
  const auto scale = word.empty() ? bare : unitSpelled<TemperatureScale>(word, kScales);
  if (!scale && word.empty() && scanner.atEnd()) return scanner.error("units.missing_unit");
  if (!scale || !scanner.atEnd()) {
    auto error = scanner.error("units.unknown_unit");
    error.arguments.push_back({"unit", excerpt(word + std::string(scanner.rest()))});
    return error;
  }
  const auto temperature = onScale(number.value(), *scale);
  if (temperature.kelvin() < 0.0 || temperature.kelvin() > kHighestK) return scanner.error("units.out_of_range");
  return temperature;
}

}  // namespace cordreach::units
