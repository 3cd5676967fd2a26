// SPDX-License-Identifier: GPL-3.0-or-later
// All words of one language by code, and how its numbers are written. Console and windows say the same through it.
// Numbers and units are joined by a narrow no-break space (U+202F); a console replaces it at its edge (columns.h).
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/error.h"
#include "base/result.h"
#include "text/phrase.h"

namespace cordreach::text {

enum class UnitSystem { Us, Metric };

struct Locale {
  UnitSystem units = UnitSystem::Us;
  std::string decimalMark = ".";
  std::string thousandsMark = ",";
};

class Phrasebook {
 public:
  // The language compiled in under that code ("en"). Error: text.no_language {language, known}.
  [[nodiscard]] static base::Result<Phrasebook> load(std::string_view language, UnitSystem units = UnitSystem::Us);
  // A flat JSON object of codes and phrases. Errors: text.not_words, and those of Phrase::parse, placed at the code.
  [[nodiscard]] static base::Result<Phrasebook> parse(std::string_view json, UnitSystem units = UnitSystem::Us);
  [[nodiscard]] static std::vector<std::string> languages();

  [[nodiscard]] bool has(std::string_view code) const { return m_phrases.find(code) != m_phrases.end(); }
  // The phrase of that code with its arguments in place. A code without words (a defect that the tests look for) is
  // answered as itself with its arguments, so that even then nothing is kept back.
  [[nodiscard]] std::string say(std::string_view code, const base::Arguments& arguments = {}) const;

  [[nodiscard]] const Locale& locale() const { return m_locale; }
  [[nodiscard]] const std::map<std::string, Phrase, std::less<>>& phrases() const { return m_phrases; }
  // The same book with every phrase changed: for pseudo languages.
  [[nodiscard]] Phrasebook transformed(Phrase (*change)(std::string_view, const Phrase&)) const;

 private:
  Phrasebook() = default;
  std::map<std::string, Phrase, std::less<>> m_phrases;
  Locale m_locale;
};

}  // namespace cordreach::text
