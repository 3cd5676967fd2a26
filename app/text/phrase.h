// SPDX-License-Identifier: GPL-3.0-or-later
// One phrase, read once: words with named placeholders.
//   {machine} {current_a}                    the argument of that name; a number is written by the unit its name ends
//   in {class|induction:uses more amps|slower}  the words of the branch that the argument names; the last, unnamed one
//   else {latest_s?for up to {latest_s}|for good} the first words when the argument is there (and finite), else the
//   second
#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"

namespace cordreach::text {

struct PhrasePart;
using PhraseParts = std::vector<PhrasePart>;

enum class PartKind { Words, Value, Select, IfPresent };

struct PhraseBranch {
  std::string key;  // empty: any other
  PhraseParts parts;
};

struct PhrasePart {
  PartKind kind;
  std::string text;  // the words, or the argument's name
  std::vector<PhraseBranch> branches;
};

class Phrase {
 public:
  // Errors: phrase.unclosed, phrase.empty_name, phrase.unexpected_close; the place is the phrase.
  [[nodiscard]] static base::Result<Phrase> parse(std::string_view text);
  explicit Phrase(PhraseParts parts) : m_parts(std::move(parts)) {}

  [[nodiscard]] const PhraseParts& parts() const { return m_parts; }
  // Every argument it mentions, in any branch.
  [[nodiscard]] std::set<std::string> argumentNames() const;

 private:
  PhraseParts m_parts;
};

}  // namespace cordreach::text
