// SPDX-License-Identifier: GPL-3.0-or-later
// Matching type letters, worn ones too.
#include "tables/detail/legend_type.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <string>

namespace cordreach::tables::detail {
namespace {

constexpr std::size_t kLongestType = 12;

std::string withoutHyphens(std::string_view text) {
  std::string out(text);
  std::erase(out, '-');
  // A nought of the European types read as a letter.
  if (out.starts_with("HO")) out[1] = '0';
  return out;
}

// Whether `pattern` covers `text`; lengths are small, so the branching of `*` is too.
bool covers(std::string_view pattern, std::string_view text) {
  if (pattern.empty()) return text.empty();
  if (pattern.front() == '*') {
    return covers(pattern.substr(1), text) || (!text.empty() && covers(pattern, text.substr(1)));
  }
  if (text.empty()) return false;
  const bool same = pattern.front() == text.front() || pattern.front() == '?' || pattern.front() == '_';
  return same && covers(pattern.substr(1), text.substr(1));
}

// `**` says no more than `*`, and costs time.
std::string withSingleStars(std::string text) {
  text.erase(std::unique(text.begin(), text.end(), [](char a, char b) { return a == '*' && b == '*'; }), text.end());
  return text;
}

bool isFileNumber(std::string_view token) {
  const auto letters = std::min(token.find_first_of("0123456789"), token.size());
  const auto digits = token.substr(letters);
  return letters >= 1 && letters <= 2 && (token[0] == 'E' || token.starts_with("LL")) && digits.size() >= 4 &&
         digits.find_first_not_of("0123456789-") == std::string_view::npos;
}

}  // namespace

std::vector<const CordType*> typesSpelled(std::string_view token) {
  std::vector<const CordType*> found;
  if (token.empty() || token.size() > kLongestType) return found;
  std::string pattern = withSingleStars(withoutHyphens(token));
  const auto worn = std::ranges::count_if(pattern, isWorn);
  if (worn > 0 && std::ssize(pattern) - worn < 2) return found;
  // The number of a parallel cord is part of its type: without it, any of the three.
  if (pattern == "SP" || pattern == "SPT" || pattern == "SPE") pattern += '?';
  for (const CordType& type : cordTypes()) {
    if (covers(pattern, withoutHyphens(type.letters))) found.push_back(&type);
  }
  return found;
}

bool saysNothing(std::string_view token) {
  static constexpr std::array<std::string_view, 40> kWords{
      "UL",     "CUL",      "C-UL", "CULUS", "ULUS",  "US",   "C",        "CSA",       "VDE",  "CE",
      "VW-1",   "VW1",      "FT1",  "FT2",   "FT4",   "MSHA", "ROHS",     "LISTED",    "TYPE", "CORD",
      "CABLE",  "FLEXIBLE", "WIRE", "OIL",   "WATER", "SUN",  "SUNLIGHT", "RESISTANT", "RES",  "OUTDOOR",
      "INDOOR", "OUTDOORS", "USE",  "DRY",   "WET",   "OR",   "AND",      "TO",        "CU",   "-"};
  return std::ranges::find(kWords, token) != kWords.end() || isFileNumber(token);
}

}  // namespace cordreach::tables::detail
