// SPDX-License-Identifier: GPL-3.0-or-later
// Reads word files and puts arguments into phrases.
#include "text/phrasebook.h"

#include <cmath>
#include <nlohmann/json.hpp>

#include "text/embedded_words.h"
#include "text/quantity_text.h"

namespace cordreach::text {

namespace {

using base::Argument;
using base::Arguments;

const Argument* find(const Arguments& arguments, std::string_view name) {
  for (const Argument& argument : arguments) {
    if (argument.name == name) return &argument;
  }
  return nullptr;
}

bool isPresent(const Argument* argument) {
  if (argument == nullptr) return false;
  if (const double* number = std::get_if<double>(&argument->value)) return std::isfinite(*number);
  return !std::get<std::string>(argument->value).empty();
}

using Numbers = std::vector<const Argument*>;

// Two amps or two volts that would read the same whole number although one is above the other: then the decimal
// decides.
bool decimalDecides(std::string_view unit, const Numbers& said) {
  for (std::size_t i = 0; i < said.size(); ++i) {
    if (unitOf(said[i]->name) != unit) continue;
    for (std::size_t j = i + 1; j < said.size(); ++j) {
      if (unitOf(said[j]->name) != unit) continue;
      const double a = std::get<double>(said[i]->value);
      const double b = std::get<double>(said[j]->value);
      if (std::round(a) == std::round(b) && std::abs(a - b) >= 0.05) return true;
    }
  }
  return false;
}

class Speaker {
 public:
  Speaker(const Phrasebook& book, const Phrase& phrase, const Arguments& arguments)
      : m_book(book), m_arguments(arguments) {
    Numbers said;
    collectSaid(phrase.parts(), said);
    m_decimalAmps = decimalDecides("a", said);
    m_decimalVolts = decimalDecides("v", said);
  }

  void speak(const PhraseParts& parts, std::string& said) const {
    for (const PhrasePart& part : parts) {
      if (part.kind == PartKind::Words) {
        said += part.text;
      } else if (part.kind == PartKind::Value) {
        said += valueText(find(m_arguments, part.text));
      } else if (const PhraseBranch* branch = branchOf(part)) {
        speak(branch->parts, said);
      }
    }
  }

 private:
  // The numbers of the branches that are taken.
  void collectSaid(const PhraseParts& parts, Numbers& said) const {
    for (const PhrasePart& part : parts) {
      if (part.kind == PartKind::Value) {
        const Argument* argument = find(m_arguments, part.text);
        if (argument != nullptr && std::holds_alternative<double>(argument->value)) said.push_back(argument);
      } else if (const PhraseBranch* branch = part.kind == PartKind::Words ? nullptr : branchOf(part)) {
        collectSaid(branch->parts, said);
      }
    }
  }

  [[nodiscard]] std::string valueText(const Argument* argument) const {
    if (argument == nullptr) return m_book.say("word.unknown");
    if (const std::string* words = std::get_if<std::string>(&argument->value)) return *words;
    const std::string_view unit = unitOf(argument->name);
    const bool decimal = (unit == "a" && m_decimalAmps) || (unit == "v" && m_decimalVolts);
    return quantityText(m_book, argument->name, std::get<double>(argument->value), {decimal});
  }

  [[nodiscard]] const PhraseBranch* branchOf(const PhrasePart& part) const {
    const Argument* argument = find(m_arguments, part.text);
    if (part.kind == PartKind::IfPresent) {
      const std::size_t index = isPresent(argument) ? 0 : 1;
      return index < part.branches.size() ? &part.branches[index] : nullptr;
    }
    const std::string* key = argument == nullptr ? nullptr : std::get_if<std::string>(&argument->value);
    for (const PhraseBranch& branch : part.branches) {
      if (branch.key.empty() || (key != nullptr && branch.key == *key)) return &branch;
    }
    return nullptr;
  }

  const Phrasebook& m_book;
  const Arguments& m_arguments;
  bool m_decimalAmps = false;
  bool m_decimalVolts = false;
};

std::string bareFacts(std::string_view code, const Arguments& arguments) {
  std::string facts(code);
  for (const Argument& argument : arguments) {
    const double* number = std::get_if<double>(&argument.value);
    facts += " " + argument.name + "=" +
             (number != nullptr ? numberText(Locale{}, *number, 3) : std::get<std::string>(argument.value));
  }
  return facts;
}

}  // namespace

base::Result<Phrasebook> Phrasebook::load(std::string_view language, UnitSystem units) {
  for (const auto& [name, json] : embeddedWords()) {
    if (name == language) return parse(json, units);
  }
  std::string known;
  for (const std::string& name : languages()) known += (known.empty() ? "" : ", ") + name;
  return base::Error{"text.no_language", std::string(language), {{"known", known}}};
}

std::vector<std::string> Phrasebook::languages() {
  std::vector<std::string> names;
  for (const auto& entry : embeddedWords()) names.emplace_back(entry.first);
  return names;
}

base::Result<Phrasebook> Phrasebook::parse(std::string_view json, UnitSystem units) {
  const nlohmann::json words = nlohmann::json::parse(json, nullptr, false);
  if (!words.is_object()) return base::Error{"text.not_words", "", {}};
  Phrasebook book;
  for (const auto& [code, value] : words.items()) {
    if (!value.is_string()) return base::Error{"text.not_words", code, {}};
    base::Result<Phrase> phrase = Phrase::parse(value.get<std::string>());
    if (!phrase) return base::Error{phrase.error().code, code, {}};
    book.m_phrases.emplace(code, std::move(phrase).value());
  }
  book.m_locale.units = units;
  if (book.has("locale.decimal_mark")) book.m_locale.decimalMark = book.say("locale.decimal_mark");
  if (book.has("locale.thousands_mark")) book.m_locale.thousandsMark = book.say("locale.thousands_mark");
  return book;
}

std::string Phrasebook::say(std::string_view code, const Arguments& arguments) const {
  const auto at = m_phrases.find(code);
  if (at == m_phrases.end()) return bareFacts(code, arguments);
  std::string said;
  Speaker(*this, at->second, arguments).speak(at->second.parts(), said);
  return said;
}

Phrasebook Phrasebook::transformed(Phrase (*change)(std::string_view, const Phrase&)) const {
  Phrasebook book;
  book.m_locale = m_locale;
  for (const auto& [code, phrase] : m_phrases) book.m_phrases.emplace(code, change(code, phrase));
  return book;
}

}  // namespace cordreach::text
