// SPDX-License-Identifier: GPL-3.0-or-later
// Quantities of one number and one unit.
#include <array>
#include <cmath>

#include "units/excerpt.h"
#include "units/parse.h"
#include "units/scanner.h"
#include "units/unit_word.h"

namespace cordreach::units {
namespace {

template <class Q>
base::Result<Q> parseOne(std::string_view text, std::span<const UnitWord<Q>> words, std::optional<Q> bare, Q highest) {
  Scanner scanner(text);
  const auto number = scanner.number();
  if (!number) return number.error();
  const std::string word = scanner.word();
  const auto unit = word.empty() ? bare : unitSpelled(std::string_view(word), words);
  if (!unit && word.empty() && scanner.atEnd()) return scanner.error("units.missing_unit");
  if (!unit || !scanner.atEnd()) {
    auto error = scanner.error("units.unknown_unit");
    error.arguments.push_back({"unit", excerpt(word + std::string(scanner.rest()))});
    return error;
  }
  if (std::signbit(number.value())) return scanner.error("units.negative");
  const Q value = number.value() * *unit;
  if (value > highest) return scanner.error("units.out_of_range");
  return value;
}

constexpr std::array<UnitWord<Current>, 12> kCurrents{{{"a", ampere},
                                                       {"amp", ampere},
                                                       {"amps", ampere},
                                                       {"ampere", ampere},
                                                       {"amperes", ampere},
                                                       {"amperio", ampere},
                                                       {"amperios", ampere},
                                                       {"ma", milliampere},
                                                       {"milliamp", milliampere},
                                                       {"milliamps", milliampere},
                                                       {"milliamperes", milliampere},
                                                       {"ka", 1000.0 * ampere}}};

constexpr std::array<UnitWord<Voltage>, 11> kVoltages{{{"v", volt},
                                                       {"volt", volt},
                                                       {"volts", volt},
                                                       {"voltio", volt},
                                                       {"voltios", volt},
                                                       {"vac", volt},
                                                       {"v ac", volt},
                                                       {"vdc", volt},
                                                       {"v dc", volt},
                                                       {"v~", volt},
                                                       {"kv", 1000.0 * volt}}};

constexpr std::array<UnitWord<Power>, 8> kPowers{{{"w", watt},
                                                  {"watt", watt},
                                                  {"watts", watt},
                                                  {"vatio", watt},
                                                  {"vatios", watt},
                                                  {"kw", 1000.0 * watt},
                                                  {"hp", horsepower},
                                                  {"horsepower", horsepower}}};

}  // namespace

base::Result<Current> parseCurrent(std::string_view text, std::optional<Current> bare) {
  return parseOne<Current>(text, kCurrents, bare, 1e6 * ampere);
}

base::Result<Voltage> parseVoltage(std::string_view text, std::optional<Voltage> bare) {
  return parseOne<Voltage>(text, kVoltages, bare, 1e6 * volt);
}

base::Result<Power> parsePower(std::string_view text, std::optional<Power> bare) {
  return parseOne<Power>(text, kPowers, bare, 1e9 * watt);
}

}  // namespace cordreach::units
