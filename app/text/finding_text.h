// SPDX-License-Identifier: GPL-3.0-or-later
// A finding and its remedies in words: what will happen, why, the one thing to do.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "planning/remedy.h"
#include "rules/finding.h"
#include "text/phrasebook.h"

namespace cordreach::text {

struct ReasonWords {
  std::string text;
  std::optional<double> share;
};

struct FindingWords {
  std::string signal;  // "CAUTION"
  std::string head;    // what will happen, one sentence
  std::string body;    // by how much against what
  std::string order;   // what to do where no tried remedy is at hand; without a full stop
  std::vector<ReasonWords> why;

  [[nodiscard]] std::string text() const { return head + " " + body; }
};

[[nodiscard]] FindingWords wordsOf(const Phrasebook& book, const rules::Finding& finding);

struct RemedyWords {
  std::string order;  // "Use outlet 1-31, no extension"
  std::string after;  // what it will then be; empty when no number was given
};

[[nodiscard]] RemedyWords wordsOf(const Phrasebook& book, const planning::Remedy& remedy);

}  // namespace cordreach::text
