// SPDX-License-Identifier: GPL-3.0-or-later
// Wire sizes and lengths of wire as typed.
#include <algorithm>
#include <cmath>

#include "units/excerpt.h"
#include "units/parse.h"
#include "units/scanner.h"
#include "units/wire_size.h"

namespace cordreach::units {
namespace {

constexpr double kLargestMm2 = 1000.0;

bool isSpace(char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; }

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && isSpace(text.front())) text.remove_prefix(1);
  while (!text.empty() && isSpace(text.back())) text.remove_suffix(1);
  return text;
}

// `#`, `No.` or `AWG` before the number.
std::string_view withoutLead(std::string_view text) {
  for (const std::string_view lead : {"#", "awg", "no.", "no ", "n\u00BA"}) {
    if (text.starts_with(lead)) return trimmed(text.substr(lead.size()));
  }
  return text;
}

bool saysGauge(std::string_view word) {
  return word.empty() || word == "awg" || word == "ga" || word == "gauge" || word == "-gauge" || word == "g" ||
         word == "calibre";
}

bool saysSquareMillimetre(std::string_view unit) {
  for (const std::string_view known : {"mm\u00B2", "mm2", "mm^2", "sq mm", "sqmm", "sq. mm", "mmq"}) {
    if (unit == known) return true;
  }
  return false;
}

// Sizes above 1 AWG in both ways of writing: `2/0` and `00`. Nothing for other numbers.
std::optional<int> noughts(std::string_view number) {
  if (number.size() == 3 && number.ends_with("/0") && number[0] >= '1' && number[0] <= '4') return '1' - number[0];
  if (!number.empty() && number.size() <= 4 && std::ranges::all_of(number, [](char c) { return c == '0'; })) {
    return 1 - static_cast<int>(number.size());
  }
  return std::nullopt;
}

}  // namespace

base::Result<WireSize> parseWireSize(std::string_view text) {
  const std::string low = folded(trimmed(text));
  const auto bare = withoutLead(low);
  const auto error = [&](const char* code) { return base::Error{code, excerpt(text), {}}; };
  if (bare.empty()) return error(low.empty() ? "units.empty" : "units.not_a_wire_size");
  const auto digits = bare.substr(0, std::min(bare.find_first_not_of("0123456789/"), bare.size()));
  if (const auto number = noughts(digits); number && saysGauge(trimmed(bare.substr(digits.size())))) {
    return WireSize::awg(*number);
  }
  Scanner scanner(bare);
  const auto number = scanner.number();
  if (!number) return error(number.error().code.c_str());
  const auto unit = trimmed(scanner.rest());
  if (saysSquareMillimetre(unit)) {
    if (number.value() <= 0.0 || number.value() > kLargestMm2) return error("units.out_of_range");
    return WireSize::squareMillimetres(number.value());
  }
  if (!saysGauge(unit) || number.value() != std::floor(number.value())) return error("units.not_a_wire_size");
  if (number.value() < 1.0 || number.value() > WireSize::kLightestAwg) return error("units.out_of_range");
  return WireSize::awg(static_cast<int>(number.value()));
}

base::Result<WireRun> parseWireRun(std::string_view text) {
  constexpr std::size_t kLongest = 64;
  const auto error = [&](const char* code) { return base::Error{code, excerpt(text), {}}; };
  if (trimmed(text).empty()) return error("units.empty");
  if (text.size() > kLongest) return error("units.not_a_run");
  std::optional<base::Error> first;
  // More than one stroke may stand in it (`60ft/1/0 AWG`): the one that leaves two readable halves divides.
  for (auto at = text.find('/'); at != std::string_view::npos; at = text.find('/', at + 1)) {
    const auto left = text.substr(0, at);
    const auto right = text.substr(at + 1);
    const auto length = parseLength(left);
    const auto size = parseWireSize(right);
    if (length && size) return WireRun{length.value(), size.value()};
    const auto lengthLast = parseLength(right);
    const auto sizeFirst = parseWireSize(left);
    if (lengthLast && sizeFirst) return WireRun{lengthLast.value(), sizeFirst.value()};
    if (!first) first = length.ok() ? size.error() : lengthLast.ok() ? sizeFirst.error() : length.error();
  }
  return first ? *first : error("units.not_a_run");
}

}  // namespace cordreach::units
