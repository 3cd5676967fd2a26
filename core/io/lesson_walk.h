// SPDX-License-Identifier: GPL-3.0-or-later
// Walks the JSON of a lesson: takes keys one by one, remembers the first fault with its place, and in the end names a
// key that nobody took.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/error.h"
#include "io/json_value.h"
#include "site/file_words.h"
#include "units/parse.h"

namespace cordreach::io {

// One object of the file. Inner objects and lists are walked by further ones that report into the same fault.
class LessonWalk {
 public:
  LessonWalk(const Json& object, std::string pointer, std::optional<base::Error>& fault);

  // Must be called last: a key that was not taken is a fault, most likely a misspelt one.
  void finish();
  [[nodiscard]] bool failed() const { return m_fault.has_value(); }
  [[nodiscard]] bool has(std::string_view key) const { return m_object.member(key) != nullptr; }

  // An absent key leaves the value as it is; `must` makes it a fault.
  void text(std::string_view key, std::string& into, bool must = false);
  void truth(std::string_view key, bool& into);
  void number(std::string_view key, double& into, double least, double most);
  template <class Enum>
  void word(std::string_view key, Enum& into);
  // By the parser, within the range; `example` tells people how to write it, as `least` and `most` do.
  struct Range {
    std::string_view least;
    std::string_view most;
  };
  template <class T>
  void quantity(std::string_view key, base::Result<T> (*parse)(std::string_view), Range range,
                const std::function<void(T)>& take);

  void object(std::string_view key, const std::function<void(LessonWalk&)>& walk);
  void list(std::string_view key, std::size_t least, std::size_t most, const std::function<void(LessonWalk&)>& walk);
  void fail(std::string code, std::string_view key, base::Arguments arguments);

 private:
  const Json* take(std::string_view key, bool must = false);
  const Json* takeOf(std::string_view key, JsonKind kind, std::string_view expected, bool must = false);

  const Json& m_object;
  std::string m_pointer;
  std::optional<base::Error>& m_fault;
  std::vector<bool> m_taken;
};

template <class Enum>
void LessonWalk::word(std::string_view key, Enum& into) {
  const Json* json = takeOf(key, JsonKind::Text, "text");
  if (json == nullptr) return;
  if (const auto value = site::fromFileWord<Enum>(json->text)) {
    into = *value;
    return;
  }
  std::string words;
  for (const auto& entry : site::kFileWords<Enum>) words += (words.empty() ? "" : ", ") + std::string(entry.word);
  fail("lesson.unknown_word", key, {{"found", json->text.substr(0, 40)}, {"expected", words}});
}

template <class T>
void LessonWalk::quantity(std::string_view key, base::Result<T> (*parse)(std::string_view), Range range,
                          const std::function<void(T)>& take) {
  const Json* json = takeOf(key, JsonKind::Text, "text");
  if (json == nullptr) return;
  const base::Result<T> read = parse(json->text);
  const std::string found = json->text.substr(0, 40);
  if (!read) return fail("lesson.bad_value", key, {{"found", found}, {"expected", std::string(range.most)}});
  if (read.value() < parse(range.least).value() || read.value() > parse(range.most).value()) {
    return fail("lesson.out_of_range", key,
                {{"found", found}, {"least", std::string(range.least)}, {"most", std::string(range.most)}});
  }
  take(read.value());
}

}  // namespace cordreach::io
