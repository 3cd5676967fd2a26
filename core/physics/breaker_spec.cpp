// SPDX-License-Identifier: GPL-3.0-or-later
// Splits the kind, before or behind, from the rating.
#include "physics/breaker_spec.h"

#include <array>
#include <cctype>
#include <string>

#include "units/parse.h"

namespace cordreach::physics {
namespace {

struct KindWord {
  std::string_view word;  // lower case
  BreakerKind kind;
};

constexpr std::array kKindWords = {KindWord{"fuse", BreakerKind::Fuse}, KindWord{"b", BreakerKind::IecB},
                                   KindWord{"c", BreakerKind::IecC}, KindWord{"d", BreakerKind::IecD}};

std::string lowerTrimmed(std::string_view text) {
  std::string result;
  for (const char c : text) result += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  const auto first = result.find_first_not_of(" \t");
  if (first == std::string::npos) return {};
  return result.substr(first, result.find_last_not_of(" \t") - first + 1);
}

}  // namespace

base::Result<Breaker> parseBreaker(std::string_view text) {
  std::string rest = lowerTrimmed(text);
  Breaker breaker;
  for (const auto& [word, kind] : kKindWords) {
    const bool before = rest.starts_with(word);
    if (!before && !rest.ends_with(word)) continue;
    breaker.kind = kind;
    rest = lowerTrimmed(before ? std::string_view(rest).substr(word.size())
                               : std::string_view(rest).substr(0, rest.size() - word.size()));
    break;
  }
  const auto rating = units::parseCurrent(rest, units::ampere);
  if (!rating.ok()) return base::Error{"breaker.unreadable", std::string(text), {}};
  breaker.rating = rating.value();
  if (breaker.rating < kSmallestBreaker || breaker.rating > kLargestBreaker) {
    return base::Error{"breaker.out_of_range",
                       std::string(text),
                       {{"smallest_a", kSmallestBreaker.si()}, {"largest_a", kLargestBreaker.si()}}};
  }
  return breaker;
}

}  // namespace cordreach::physics
