// SPDX-License-Identifier: GPL-3.0-or-later
// Words of findings stand in the book under `finding.`, of reasons under `reason.`, of remedies under `remedy.`.
#include "text/finding_text.h"

#include <cctype>

#include "text/severity_text.h"

namespace cordreach::text {

namespace {

// A sentence may begin with an argument; it still begins with a capital.
std::string sentence(std::string words) {
  if (!words.empty()) words[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(words[0])));
  return words;
}

}  // namespace

FindingWords wordsOf(const Phrasebook& book, const rules::Finding& finding) {
  const auto say = [&](const char* part) {
    return sentence(book.say("finding." + finding.code + part, finding.arguments));
  };
  FindingWords words{signalWord(book, finding.severity), say(".head"), say(".body"), say(".order"), {}};
  for (const rules::Reason& reason : finding.why) {
    words.why.push_back({book.say("reason." + reason.code, reason.arguments), reason.share});
  }
  return words;
}

RemedyWords wordsOf(const Phrasebook& book, const planning::Remedy& remedy) {
  return {sentence(book.say("remedy." + remedy.code, remedy.arguments)),
          remedy.after.empty() ? std::string{} : book.say("remedy.after", remedy.after)};
}

}  // namespace cordreach::text
