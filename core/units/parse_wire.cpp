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

