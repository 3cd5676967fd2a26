// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/lesson_walk.h"

#include "site/pointer_step.h"

namespace cordreach::io {

namespace {
constexpr std::size_t kLongestText = 400;
}  // namespace

LessonWalk::LessonWalk(const Json& object, std::string pointer, std::optional<base::Error>& fault)
    : m_object(object), m_pointer(std::move(pointer)), m_fault(fault), m_taken(object.items.size()) {
  if (object.kind != JsonKind::Object) fail("lesson.wrong_type", "", {{"expected", "object"}});
}

void LessonWalk::finish() {
  if (m_object.kind != JsonKind::Object) return;
  for (std::size_t i = 0; i < m_taken.size(); ++i) {
    if (!m_taken[i]) return fail("lesson.unknown_key", "", {{"key", m_object.items[i].key.substr(0, 40)}});
  }
}

void LessonWalk::fail(std::string code, std::string_view key, base::Arguments arguments) {
  if (m_fault) return;
  std::string place = m_pointer;
  if (!key.empty()) place += site::pointerStep(key);
  m_fault = base::Error{std::move(code), std::move(place), std::move(arguments)};
}

const Json* LessonWalk::take(std::string_view key, bool must) {
  if (failed()) return nullptr;
  const Json* found = m_object.member(key);
  if (found != nullptr) m_taken[static_cast<std::size_t>(found - m_object.items.data())] = true;
  if (found == nullptr && must) fail("lesson.missing_key", "", {{"key", std::string(key)}});
  return found;
}

const Json* LessonWalk::takeOf(std::string_view key, JsonKind kind, std::string_view expected, bool must) {
  const Json* json = take(key, must);
  if (json == nullptr || json->kind == kind) return json;
  fail("lesson.wrong_type", key, {{"expected", std::string(expected)}});
  return nullptr;
}

void LessonWalk::text(std::string_view key, std::string& into, bool must) {
  const Json* json = takeOf(key, JsonKind::Text, "text", must);
  if (json == nullptr) return;
  if (json->text.size() > kLongestText) {
    return fail("lesson.text_too_long", key, {{"limit", static_cast<double>(kLongestText)}});
  }
  into = json->text;
}

void LessonWalk::truth(std::string_view key, bool& into) {
  const Json* json = take(key);
  if (json == nullptr) return;
  if (json->kind != JsonKind::True && json->kind != JsonKind::False) {
    return fail("lesson.wrong_type", key, {{"expected", "boolean"}});
  }
  into = json->kind == JsonKind::True;
}

void LessonWalk::number(std::string_view key, double& into, double least, double most) {
  const Json* json = takeOf(key, JsonKind::Number, "number");
  if (json == nullptr) return;
  if (!(json->number >= least && json->number <= most)) {
    return fail("lesson.out_of_range", key, {{"found", json->text.substr(0, 40)}, {"least", least}, {"most", most}});
  }
  into = json->number;
}

void LessonWalk::object(std::string_view key, const std::function<void(LessonWalk&)>& walk) {
  const Json* json = takeOf(key, JsonKind::Object, "object");
  if (json == nullptr) return;
  LessonWalk inner(*json, m_pointer + site::pointerStep(key), m_fault);
  walk(inner);
  inner.finish();
}

void LessonWalk::list(std::string_view key, std::size_t least, std::size_t most,
                      const std::function<void(LessonWalk&)>& walk) {
  const Json* json = takeOf(key, JsonKind::Array, "array", least > 0);
  if (json == nullptr) return;
  if (json->items.size() < least || json->items.size() > most) {
    return fail(
        "lesson.bad_count", key,
        {{"key", std::string(key)}, {"least", static_cast<double>(least)}, {"most", static_cast<double>(most)}});
  }
  for (std::size_t i = 0; i < json->items.size() && !failed(); ++i) {
    LessonWalk inner(json->items[i], m_pointer + site::pointerStep(key) + "/" + std::to_string(i), m_fault);
    walk(inner);
    inner.finish();
  }
}

}  // namespace cordreach::io
