// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers as people type them in both systems.
#include "units/scanner.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstddef>
#include <optional>
#include <utility>

#include "units/excerpt.h"

namespace cordreach::units {
namespace {

constexpr std::size_t kLongestNumber = 40;

bool isDigit(char c) { return c >= '0' && c <= '9'; }

// Whether `text` is digits in groups of three, the first of one to three, between separators.
bool grouped(std::string_view text, char separator) {
  bool first = true;
  while (true) {
    const auto end = std::min(text.find(separator), text.size());
    if (first ? (end < 1 || end > 3) : end != 3) return false;
    if (end == text.size()) return true;
    text.remove_prefix(end + 1);
    first = false;
  }
}

std::string without(std::string_view text, char separator) {
  std::string out(text);
  std::erase(out, separator);
  return out;
}

// Digits with separators, put as digits with one point at most; or the code of what is wrong with them.
std::pair<std::string, const char*> normalised(std::string_view run) {
  const auto points = std::ranges::count(run, '.');
  const auto commas = std::ranges::count(run, ',');
  if (!isDigit(run.back())) return {"", "units.not_a_number"};
  if (points == 0 && commas == 0) return {std::string(run), nullptr};
  if (points > 0 && commas > 0) {
    const auto last = run.find_last_of(".,");
    const char decimal = run[last];
    const char thousands = decimal == '.' ? ',' : '.';
    const auto whole = run.substr(0, last);
    if (std::ranges::count(run, decimal) != 1 || !grouped(whole, thousands)) return {"", "units.not_a_number"};
    return {without(whole, thousands) + "." + std::string(run.substr(last + 1)), nullptr};
  }
  const char separator = points > 0 ? '.' : ',';
  if (points + commas > 1) {
    if (!grouped(run, separator)) return {"", "units.not_a_number"};
    return {without(run, separator), nullptr};
  }
  const auto at = run.find(separator);
  const auto whole = run.substr(0, at);
  const auto part = run.substr(at + 1);
  if (part.size() == 3 && !whole.empty() && whole.size() <= 3 && whole.front() != '0') {
    return {"", "units.ambiguous_number"};
  }
  return {(whole.empty() ? "0" : std::string(whole)) + "." + std::string(part), nullptr};
}

// `3/4` at the start of `text`: its value and length.
std::optional<std::pair<double, std::size_t>> fractionAt(std::string_view text) {
  int top = 0;
  int bottom = 0;
  const char* end = text.data() + text.size();
  const auto first = std::from_chars(text.data(), end, top);
  if (first.ec != std::errc() || first.ptr == end || *first.ptr != '/' || !isDigit(text.front())) return std::nullopt;
  if (first.ptr + 1 == end || !isDigit(first.ptr[1])) return std::nullopt;
  const auto second = std::from_chars(first.ptr + 1, end, bottom);
  if (second.ec != std::errc() || bottom < 1) return std::nullopt;
  return std::pair{static_cast<double>(top) / bottom, static_cast<std::size_t>(second.ptr - text.data())};
}

}  // namespace

std::string folded(std::string_view text) {
  std::string out(text);
  for (char& c : out) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return out;
}

base::Error Scanner::error(const char* code) const { return {code, excerpt(m_text), {}}; }

bool Scanner::take(std::string_view piece) {
  if (!m_rest.starts_with(piece)) return false;
  m_rest.remove_prefix(piece.size());
  return true;
}

void Scanner::skipSpace() {
  // Besides ASCII: no-break, thin and narrow no-break space, which typesetters put between number and unit.
  while (take(" ") || take("\t") || take("\r") || take("\n") || take("\u00A0") || take("\u2009") || take("\u202F")) {
  }
}

bool Scanner::takeVulgarFraction(double& value) {
  if (take("\u00BD")) return value += 0.5, true;
  if (take("\u00BC")) return value += 0.25, true;
  if (take("\u00BE")) return value += 0.75, true;
  return false;
}

base::Result<double> Scanner::unsignedNumber() {
  double value = 0.0;
  if (takeVulgarFraction(value)) return value;
  const auto length = std::min(m_rest.find_first_not_of("0123456789.,"), m_rest.size());
  const auto run = m_rest.substr(0, length);
  if (std::ranges::none_of(run, isDigit) || length > kLongestNumber) return error("units.not_a_number");
  if (const auto fraction = fractionAt(m_rest)) {
    m_rest.remove_prefix(fraction->second);
    return fraction->first;
  }
  const auto [digits, flaw] = normalised(run);
  if (flaw != nullptr) return error(flaw);
  const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), value);
  if (read.ec != std::errc()) return error("units.out_of_range");
  m_rest.remove_prefix(length);
  if (digits.find('.') != std::string::npos || takeVulgarFraction(value)) return value;
  // A whole number may be followed by its fraction: `1 1/2`, `1-1/2`.
  Scanner ahead = *this;
  if (!ahead.take("-")) ahead.skipSpace();
  if (ahead.m_rest.size() < m_rest.size()) {
    if (const auto fraction = fractionAt(ahead.m_rest); fraction && fraction->first < 1.0) {
      m_rest = ahead.m_rest.substr(fraction->second);
      value += fraction->first;
    }
  }
  return value;
}

base::Result<double> Scanner::number() {
  if (atEnd())
    return error(m_text.find_first_not_of(" \t\r\n") == std::string_view::npos ? "units.empty" : "units.not_a_number");
  const bool negative = take("-") || take("\u2212");
  if (!negative) take("+");
  auto value = unsignedNumber();
  if (!value) return value;
  skipSpace();
  return negative ? -value.value() : value.value();
}

std::string Scanner::word() {
  const auto length = std::min(m_rest.find_first_of("0123456789"), m_rest.size());
  std::string out = folded(m_rest.substr(0, length));
  m_rest.remove_prefix(length);
  while (!out.empty() && (out.back() == ' ' || out.back() == '\t' || out.back() == '\n' || out.back() == '\r')) {
    out.pop_back();
  }
  if (out.size() > 1 && out.back() == '.') out.pop_back();
  return out;
}

}  // namespace cordreach::units
