// SPDX-License-Identifier: GPL-3.0-or-later
// Words apart at spaces; a number and its unit may stand apart too ("50 ft").
#include "console/arguments.h"

#include <array>
#include <cctype>
#include <optional>
#include <sstream>
#include <utility>
#include <vector>

#include "tables/cord_legend.h"
#include "units/parse.h"
#include "units/wire_size.h"

namespace cordreach::console {

namespace {

using tables::Laying;
using tables::LoadClass;

constexpr std::array<std::pair<std::string_view, LoadClass>, 5> kClasses{{
    {"induction", LoadClass::Induction},
    {"dc", LoadClass::RectifiedDc},
    {"universal", LoadClass::Universal},
    {"heat", LoadClass::Resistance},
    {"electronic", LoadClass::Electronic},
}};

constexpr std::array<std::pair<std::string_view, Laying>, 6> kLayings{{
    {"straight", Laying::Straight},
    {"floor", Laying::Floor},
    {"carpet", Laying::Carpet},
    {"covered", Laying::Covered},
    {"coiled", Laying::Coiled},
    {"reel", Laying::Reel},
}};

template <class Pairs>
auto valueNamed(const Pairs& pairs, std::string_view name) -> std::optional<decltype(pairs[0].second)> {
  for (const auto& [key, value] : pairs) {
    if (key == name) return value;
  }
  return std::nullopt;
}

std::string lowered(std::string_view text) {
  std::string result(text);
  for (char& c : result) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return result;
}

std::vector<std::string> wordsOf(const std::string& text) {
  std::istringstream stream(text);
  std::vector<std::string> words;
  for (std::string word; stream >> word;) words.push_back(word);
  return words;
}

bool isBareNumber(const std::string& word) {
  return !word.empty() && word.find_first_not_of("0123456789.,") == std::string::npos;
}

// "50" and "ft" to "50ft": only a number that has no unit of its own takes the next word.
std::vector<std::string> joinedNumbers(const std::vector<std::string>& words) {
  std::vector<std::string> joined;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (isBareNumber(words[i]) && i + 1 < words.size()) {
      joined.push_back(words[i] + words[i + 1]);
      ++i;
    } else {
      joined.push_back(words[i]);
    }
  }
  return joined;
}

base::Error unexpected(const std::string& word, const std::string& text) {
  return {"console.unexpected_word", text, {{"word", word}}};
}

template <class T>
site::Known<T> stated(T value, std::string typed = {}) {
  return site::Stated<T>{std::move(value), {}, {}, std::move(typed), {}, {}, {}};
}

}  // namespace

base::Result<site::CordMake> parseCordArgument(const std::string& text) {
  site::CordMake make;
  for (const std::string& word : joinedNumbers(wordsOf(text))) {
    const base::Result<units::Length> length = units::parseLength(word);
    if (length && !make.length) {
      make.length = stated(length.value(), word);
    } else {
      make.legend += (make.legend.empty() ? "" : " ") + word;
    }
  }
  const tables::CordLegend legend = tables::readLegend(make.legend);
  if (!legend.unread.empty()) return unexpected(legend.unread.front(), text);
  if (!legend.size) return base::Error{"console.no_cord_size", text, {}};
  if (!make.length) return base::Error{"console.no_cord_length", text, {}};
  if (!(make.length->value > 0.0 * units::metre)) return base::Error{"console.zero", make.length->typed, {}};
  make.size = stated(*legend.size);
  if (legend.type) make.type = *legend.type;
  if (legend.conductors) make.conductors = stated(*legend.conductors);
  if (legend.rating) make.rating = stated(*legend.rating);
  return make;
}

base::Result<site::Inlet> parseMachineArgument(const std::string& text) {
  site::Inlet inlet;
  inlet.name = "A";
  bool hasClass = false;
  for (const std::string& word : joinedNumbers(wordsOf(text))) {
    if (const auto loadClass = valueNamed(kClasses, lowered(word))) {
      if (hasClass) return unexpected(word, text);
      inlet.loadClass = *loadClass;
      hasClass = true;
    } else if (word.find('/') != std::string::npos) {
      const base::Result<units::WireRun> run = units::parseWireRun(word);
      if (!run) return run.error();
      if (inlet.cord.size) return unexpected(word, text);
      inlet.cord.size = stated(run.value().size);
      inlet.cord.length = stated(run.value().length);
    } else if (const base::Result<units::Current> amps = units::parseCurrent(word); amps && !inlet.plate) {
      if (!(amps.value() > 0.0 * units::ampere)) return base::Error{"console.zero", word, {}};
      inlet.plate = stated(amps.value(), word);
    } else {
      return unexpected(word, text);
    }
  }
  if (!inlet.plate) return base::Error{"console.no_amps", text, {}};
  if (!hasClass) return base::Error{"console.no_class", text, {}};
  if (!inlet.cord.size) return base::Error{"console.no_machine_cord", text, {}};
  inlet.cord.conductors = stated(3);
  return inlet;
}

namespace {

base::Error readingWords(const std::string& text) { return {"console.reading_words", text, {}}; }

// What stands after the amps: air, laying, turns.
base::Result<site::JacketReading> surroundedBy(const std::vector<std::string>& words, site::JacketReading reading,
                                               const std::string& text) {
  for (std::size_t i = 3; i < words.size(); ++i) {
    const auto laying = valueNamed(kLayings, lowered(words[i]));
    if (laying) {
      reading.laying = *laying;
      const bool wound = *laying == Laying::Coiled || *laying == Laying::Reel;
      if (wound) reading.turns = 1.0;
    } else if (lowered(words[i]) == "in" && i + 1 < words.size()) {
      const auto air = units::parseTemperature(words[++i]);
      if (!air) return air.error();
      reading.air = air.value();
    } else if (reading.turns > 0.0 && isBareNumber(words[i])) {
      reading.turns = std::stod(words[i]);
      if (!(reading.turns >= 1.0)) return readingWords(text);
    } else {
      return readingWords(text);
    }
  }
  return reading;
}

}  // namespace

base::Result<site::JacketReading> parseReadingArgument(const std::string& text, units::Temperature air) {
  const std::vector<std::string> words = joinedNumbers(wordsOf(text));
  if (words.size() < 3 || lowered(words[1]) != "at") return readingWords(text);
  site::JacketReading reading;
  reading.air = air;
  const auto surface = units::parseTemperature(words[0]);
  if (!surface) return surface.error();
  reading.surface = surface.value();
  const auto amps = units::parseCurrent(words[2]);
  if (!amps) return amps.error();
  if (!(amps.value() > 0.0 * units::ampere)) return base::Error{"console.zero", words[2], {}};
  reading.current = amps.value();
  auto whole = surroundedBy(words, reading, text);
  if (whole && whole.value().surface <= whole.value().air) return base::Error{"console.reading_not_warm", text, {}};
  return whole;
}

base::Result<Laying> parseLaying(std::string_view text) {
  if (const auto laying = valueNamed(kLayings, lowered(text))) return *laying;
  return base::Error{"console.no_such_laying", std::string(text), {}};
}

}  // namespace cordreach::console
