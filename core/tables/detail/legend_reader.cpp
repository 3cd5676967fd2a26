// SPDX-License-Identifier: GPL-3.0-or-later
// The pieces of a legend, one function each.
#include "tables/detail/legend_reader.h"

#include <algorithm>
#include <cmath>

#include "tables/detail/legend_type.h"

namespace cordreach::tables::detail {
namespace {

constexpr int kMostConductors = 9;  // more are control cables, and a date such as 11/12 is not a cord
constexpr int kLightestGauge = 30;
constexpr double kLargestMm2 = 300.0;

bool takeSquareMillimetres(LegendCursor& cursor) { return cursor.takeAny({"MM2", "MM^2", "SQMM", "SQ MM", "SQ.MM"}); }

bool takeGaugeWord(LegendCursor& cursor) { return cursor.takeAny({"AWG", "GAUGE", "GA."}) || cursor.take("GA"); }

bool takeConductorWord(LegendCursor& cursor) {
  return cursor.takeAny({"CONDUCTORS", "CONDUCTOR", "COND.", "COND", "CORES", "CORE", "C"});
}

bool isMetricSize(const PrintedNumber& number) {
  return !number.worn && number.value > 0.0 && number.value <= kLargestMm2;
}

}  // namespace

bool LegendReader::accept(const LegendCursor& after) {
  if (!after.atBoundary()) return false;
  m_cursor = after;
  return true;
}

bool LegendReader::tryType() {
  LegendCursor cursor = m_cursor;
  std::string token(cursor.token());
  auto types = typesSpelled(token);
  std::size_t length = token.size();
  if (types.size() > 1 && token.starts_with("SP") && token.back() != '*') {
    // The number of a parallel cord printed apart: `SPT 2`.
    LegendCursor next = cursor;
    next.skip(length);
    next.skipSpaces();
    if (next.token().size() == 1 && next.token() >= "1" && next.token() <= "3") {
      types = typesSpelled(token + std::string(next.token()));
      length = cursor.rest().size() - next.rest().size() + 1;
    }
  }
  if (types.empty()) {
    // Type and size printed without a space: `SJTW14/3`.
    const auto letters = token.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZ");
    if (letters == std::string::npos || token[letters] < '0' || token[letters] > '9') return false;
    types = typesSpelled(std::string_view(token).substr(0, letters));
    if (types.size() != 1) return false;
    length = letters;
  }
  m_cursor.skip(length);
  typesAre(types);
  return true;
}

bool LegendReader::tryVoltage() {
  LegendCursor cursor = m_cursor;
  auto number = cursor.takeNumber();
  if (number && cursor.take("/")) number = cursor.takeNumber();
  cursor.skipSpaces();
  if (!number || !number->isWhole(50, 1000) || !cursor.takeAny({"VOLTS", "VOLT", "VAC", "V"}) || !accept(cursor)) {
    return false;
  }
  const auto voltage = number->value * units::volt;
  m_legend.voltage = m_legend.voltage ? std::min(*m_legend.voltage, voltage) : voltage;
  return true;
}

bool LegendReader::tryCores() {
  LegendCursor cursor = m_cursor;
  const auto count = cursor.takeNumber();
  cursor.skipSpaces();
  const bool earthed = cursor.take("G");
  if (!count || (!earthed && !cursor.takeAny({"X", "*"}))) return false;
  cursor.skipSpaces();
  const auto size = cursor.takeNumber();
  if (!size || !count->isWhole(2, kMostConductors)) return false;
  LegendCursor withUnit = cursor;
  withUnit.skipSpaces();
  const bool metric = takeSquareMillimetres(withUnit);
  const bool gauge = !metric && takeGaugeWord(withUnit);
  const auto piece = m_cursor.rest().substr(0, m_cursor.rest().size() - cursor.rest().size());
  if (!accept(metric || gauge ? withUnit : cursor)) return false;
  conductorsAre(static_cast<int>(count->value));
  // Without a unit, 3X16 may be either: mm² and gauge share the whole numbers up to 10, and 16.
  const bool plainlyMetric = metric || earthed || size->decimal;
  const bool plainlyGauge = gauge || (size->isWhole(11, kLightestGauge) && size->value != 16.0);
  if (!gauge && plainlyMetric && isMetricSize(*size)) {
    sizeIs(units::WireSize::squareMillimetres(size->value));
  } else if (plainlyGauge && size->isWhole(1, kLightestGauge)) {
    sizeIs(units::WireSize::awg(static_cast<int>(size->value)));
  } else {
    unread(piece);
  }
  return true;
}

bool LegendReader::tryGauge() {
  LegendCursor cursor = m_cursor;
  bool said = cursor.take("#");
  if (!said && cursor.take("AWG")) said = true;
  cursor.skipSpaces();
  const auto number = cursor.takeNumber();
  if (!number) return false;
  const bool nought = cursor.take("/0");
  LegendCursor after = cursor;
  after.skipSpaces();
  if (takeGaugeWord(after)) {
    cursor = after;
    said = true;
  }
  if (!said) return false;
  std::optional<PrintedNumber> count;
  LegendCursor more = cursor;
  more.skipSpaces();
  if (more.takeAny({"X", "/", "*"})) {
    more.skipSpaces();
    count = more.takeNumber();
    takeConductorWord(more);
    if (count && more.atBoundary()) cursor = more;
  }
  const auto piece = m_cursor.token();
  if (!accept(cursor)) return false;
  if (number->isWhole(1, nought ? 4 : kLightestGauge)) {
    const int gauge = static_cast<int>(number->value);
    sizeIs(units::WireSize::awg(nought ? 1 - gauge : gauge));
  } else {
    unread(piece);
  }
  if (count && count->isWhole(2, kMostConductors)) conductorsAre(static_cast<int>(count->value));
  return true;
}

bool LegendReader::tryGaugeAndCount() {
  LegendCursor cursor = m_cursor;
  const auto gauge = cursor.takeNumber();
  if (!gauge || !cursor.takeAny({"/", "-"})) return false;
  const auto count = cursor.takeNumber();
  cursor.take("C");
  const bool gaugeFits = gauge->worn || gauge->isWhole(1, kLightestGauge);
  const bool countFits = count && (count->worn || count->isWhole(2, kMostConductors));
  const auto piece = m_cursor.token();
  if (!gaugeFits || !countFits || !accept(cursor)) return false;
  if (!gauge->worn) sizeIs(units::WireSize::awg(static_cast<int>(gauge->value)));
  if (!count->worn) conductorsAre(static_cast<int>(count->value));
  if (gauge->worn || count->worn) unread(piece);
  return true;
}

bool LegendReader::tryMetric() {
  LegendCursor cursor = m_cursor;
  const auto number = cursor.takeNumber();
  cursor.skipSpaces();
  if (!number || !isMetricSize(*number) || !takeSquareMillimetres(cursor) || !accept(cursor)) return false;
  sizeIs(units::WireSize::squareMillimetres(number->value));
  return true;
}

bool LegendReader::tryTemperature() {
  LegendCursor cursor = m_cursor;
  const bool below = cursor.take("-");
  if (!below) cursor.take("+");
  const auto number = cursor.takeNumber();
  cursor.skipSpaces();
  if (cursor.takeAny({"DEGREES", "DEGREE", "DEG.", "DEG"})) cursor.skipSpaces();
  const bool fahrenheit = cursor.take("F");
  if (!number || !number->isWhole(below ? 1 : 40, 250) || (!fahrenheit && !cursor.takeAny({"CELSIUS", "C"})) ||
      !accept(cursor)) {
    return false;
  }
  if (below) return true;  // how cold it may get is no rating for heat
  const auto rating =
      fahrenheit ? units::Temperature::fromFahrenheit(number->value) : units::Temperature::fromCelsius(number->value);
  m_legend.rating = m_legend.rating ? std::min(*m_legend.rating, rating) : rating;
  return true;
}

bool LegendReader::tryConductorCount() {
  LegendCursor cursor = m_cursor;
  const auto number = cursor.takeNumber();
  if (!number || !number->isWhole(2, kMostConductors)) return false;
  if (!cursor.takeAny({"/", "-"})) cursor.skipSpaces();
  if (!takeConductorWord(cursor) || !accept(cursor)) return false;
  conductorsAre(static_cast<int>(number->value));
  return true;
}

void LegendReader::sizeIs(const units::WireSize& size) {
  if (m_legend.size && *m_legend.size != size) {
    // `16AWG(1.31mm²)` says the same twice; gauges are 26 % apart.
    const bool bothSystems = m_legend.size->awgNumber().has_value() != size.awgNumber().has_value();
    if (bothSystems && std::abs(m_legend.size->area() / size.area() - 1.0) < 0.15) return;
    m_sizeDisputed = true;
  }
  m_legend.size = size;
}

void LegendReader::conductorsAre(int count) {
  if (m_legend.conductors && *m_legend.conductors != count) m_conductorsDisputed = true;
  m_legend.conductors = count;
}

void LegendReader::typesAre(const std::vector<const CordType*>& types) {
  std::vector<std::string> names;
  for (const CordType* type : types) names.push_back(type->letters);
  if (m_legend.possibleTypes.empty()) {
    m_legend.possibleTypes = names;
    return;
  }
  // Print repeats along the cord: what is worn in one place may be whole in another.
  std::vector<std::string> shared;
  for (const auto& name : m_legend.possibleTypes) {
    if (std::ranges::find(names, name) != names.end()) shared.push_back(name);
  }
  m_typeDisputed = m_typeDisputed || shared.empty();
  m_legend.possibleTypes = shared.empty() ? names : shared;
}

void LegendReader::unread(std::string_view piece) {
  constexpr std::size_t kMostPieces = 40;
  constexpr std::size_t kMostBytes = 60;
  if (m_legend.unread.size() < kMostPieces) m_legend.unread.emplace_back(piece.substr(0, kMostBytes));
}

CordLegend LegendReader::read() {
  for (m_cursor.skipSpaces(); !m_cursor.atEnd(); m_cursor.skipSpaces()) {
    if (tryType() || tryVoltage() || tryCores() || tryGauge() || tryGaugeAndCount() || tryMetric() ||
        tryTemperature() || tryConductorCount()) {
      continue;
    }
    const auto token = m_cursor.token();
    if (!saysNothing(token)) unread(token);
    m_cursor.skip(token.size());
  }
  if (m_sizeDisputed) m_legend.size.reset();
  if (m_conductorsDisputed) m_legend.conductors.reset();
  if (m_typeDisputed) m_legend.possibleTypes.clear();
  if (m_legend.possibleTypes.size() == 1) m_legend.type = m_legend.possibleTypes.front();
  for (const auto& name : m_legend.possibleTypes) {
    const CordFamily family = cordType(name)->family;
    if (m_legend.family && *m_legend.family != family) return m_legend.family.reset(), std::move(m_legend);
    m_legend.family = family;
  }
  return std::move(m_legend);
}

}  // namespace cordreach::tables::detail
