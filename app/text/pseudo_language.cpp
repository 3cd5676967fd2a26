// SPDX-License-Identifier: GPL-3.0-or-later
// Lengthens each run of letters, so that wrapping sees longer words and not only more of them.
#include "text/pseudo_language.h"

#include <cctype>
#include <cmath>

namespace cordreach::text {

namespace {

constexpr double kLonger = 0.4;

std::string accented(char c) {
  switch (c) {
    case 'a':
      return "\u00E4";
    case 'e':
      return "\u00E9";
    case 'i':
      return "\u00EE";
    case 'o':
      return "\u00F6";
    case 'u':
      return "\u00FC";
    default:
      return {c};
  }
}

std::string lengthened(const std::string& words) {
  std::string longer;
  double owed = 0.0;
  bool inWord = false;
  const auto endWord = [&] {
    for (; inWord && owed >= 1.0; owed -= 1.0) longer += '~';
    inWord = false;
  };
  for (const char c : words) {
    owed += kLonger;
    if (std::isalpha(static_cast<unsigned char>(c)) != 0) {
      inWord = true;
    } else {
      endWord();
    }
    longer += accented(c);
  }
  endWord();
  return longer;
}

PhraseParts changed(const PhraseParts& parts) {
  PhraseParts result = parts;
  for (PhrasePart& part : result) {
    if (part.kind == PartKind::Words) part.text = lengthened(part.text);
    for (PhraseBranch& branch : part.branches) branch.parts = changed(branch.parts);
  }
  return result;
}

}  // namespace

Phrasebook pseudoLanguage(const Phrasebook& book) {
  return book.transformed([](std::string_view code, const Phrase& phrase) {
    const std::string_view room = code.substr(0, code.find('.'));
    const bool kept = room == "unit" || room == "severity" || room == "locale";
    return kept ? phrase : Phrase(changed(phrase.parts()));
  });
}

}  // namespace cordreach::text
