// SPDX-License-Identifier: GPL-3.0-or-later
// Quantities that may come in parts, each smaller than the one before: feet and inches; hours, minutes, seconds.
#include <array>
#include <cmath>

#include "units/excerpt.h"
#include "units/parse.h"
#include "units/scanner.h"
#include "units/unit_word.h"

namespace cordreach::units {
namespace {

template <class Q>
struct Grammar {
  std::span<const UnitWord<Q>> words;
  // Which unit may follow which, and how many of it at most make up one of the larger.
  struct Step {
    Q larger, smaller;
    double count;
  };
  std::span<const Step> steps;
  Q highest;
};

template <class Q>
const typename Grammar<Q>::Step* stepAfter(const Grammar<Q>& grammar, Q larger, std::optional<Q> smaller) {
  for (const auto& step : grammar.steps) {
    if (step.larger == larger && (!smaller || step.smaller == *smaller)) return &step;
  }
  return nullptr;
}

template <class Q>
base::Error unknownUnit(const Scanner& scanner, const std::string& word) {
  auto error = scanner.error("units.unknown_unit");
  error.arguments.push_back({"unit", excerpt(word)});
  return error;
}

template <class Q>
base::Result<Q> parseParts(std::string_view text, const Grammar<Q>& grammar, std::optional<Q> bare) {
  Scanner scanner(text);
  Q sum{};
  std::optional<Q> before;
  do {
    const auto number = scanner.number();
    if (!number) return number.error();
    if (std::signbit(number.value())) return scanner.error("units.negative");
    const std::string word = scanner.word();
    auto unit = word.empty() ? bare : unitSpelled<Q>(word, grammar.words);
    if (before) {
      // The last part may leave its unit to be understood: `1h30`, `5'6`.
      const auto* step = stepAfter(grammar, *before, word.empty() ? std::nullopt : unit);
      if (step == nullptr || (!word.empty() && !unit)) return unknownUnit<Q>(scanner, word);
      if (number.value() >= step->count) return scanner.error("units.out_of_range");
      unit = step->smaller;
    } else if (!unit) {
      return word.empty() ? scanner.error("units.missing_unit") : unknownUnit<Q>(scanner, word);
    }
    sum += number.value() * *unit;
    before = unit;
  } while (!scanner.atEnd());
  if (sum > grammar.highest) return scanner.error("units.out_of_range");
  return sum;
}

constexpr std::array<UnitWord<Length>, 38> kLengths{{{"ft", foot},
                                                     {"foot", foot},
                                                     {"feet", foot},
                                                     {"pie", foot},
                                                     {"pies", foot},
                                                     {"'", foot},
                                                     {"\u2032", foot},
                                                     {"\u2019", foot},
                                                     {"-ft", foot},
                                                     {"-foot", foot},
                                                     {"in", inch},
                                                     {"inch", inch},
                                                     {"inches", inch},
                                                     {"pulgada", inch},
                                                     {"pulgadas", inch},
                                                     {"\"", inch},
                                                     {"''", inch},
                                                     {"\u2033", inch},
                                                     {"\u201D", inch},
                                                     {"m", metre},
                                                     {"metre", metre},
                                                     {"metres", metre},
                                                     {"meter", metre},
                                                     {"meters", metre},
                                                     {"metro", metre},
                                                     {"metros", metre},
                                                     {"mm", millimetre},
                                                     {"millimetres", millimetre},
                                                     {"millimeters", millimetre},
                                                     {"cm", 0.01 * metre},
                                                     {"centimetres", 0.01 * metre},
                                                     {"centimeters", 0.01 * metre},
                                                     {"km", 1000.0 * metre},
                                                     {"yd", 3.0 * foot},
                                                     {"yard", 3.0 * foot},
                                                     {"yards", 3.0 * foot},
                                                     {"yarda", 3.0 * foot},
                                                     {"yardas", 3.0 * foot}}};
constexpr std::array<Grammar<Length>::Step, 1> kFeetAndInches{{{foot, inch, 12.0}}};

constexpr std::array<UnitWord<Duration>, 23> kDurations{
    {{"h", hour},          {"hr", hour},        {"hrs", hour},        {"hour", hour},      {"hours", hour},
     {"hora", hour},       {"horas", hour},     {"min", minute},      {"mins", minute},    {"m", minute},
     {"minute", minute},   {"minutes", minute}, {"minuto", minute},   {"minutos", minute}, {"s", second},
     {"sec", second},      {"secs", second},    {"second", second},   {"seconds", second}, {"segundo", second},
     {"segundos", second}, {"d", 24.0 * hour},  {"days", 24.0 * hour}}};
constexpr std::array<Grammar<Duration>::Step, 3> kHoursMinutesSeconds{
    {{hour, minute, 60.0}, {minute, second, 60.0}, {24.0 * hour, hour, 24.0}}};

}  // namespace

base::Result<Length> parseLength(std::string_view text, std::optional<Length> bare) {
  return parseParts<Length>(text, {kLengths, kFeetAndInches, 1e5 * metre}, bare);
}

base::Result<Duration> parseDuration(std::string_view text, std::optional<Duration> bare) {
  return parseParts<Duration>(text, {kDurations, kHoursMinutesSeconds, 87660.0 * hour}, bare);
}

}  // namespace cordreach::units
