// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/lesson_words.h"

#include "text/quantity_text.h"
#include "units/parse.h"

namespace cordreach::app {

namespace {

// None: neither a length nor a temperature.
std::optional<std::string> quantityOf(const text::Phrasebook& book, std::string_view typed) {
  if (const auto length = units::parseLength(typed)) return text::quantityText(book, "x_m", length.value().si());
  if (const auto at = units::parseTemperature(typed)) return text::quantityText(book, "x_c", at.value().celsius());
  return std::nullopt;
}

// What stands in braces and is no quantity stays as it was typed.
std::string withQuantities(const text::Phrasebook& book, const std::string& text) {
  std::string worded;
  std::size_t from = 0;
  while (true) {
    const std::size_t open = text.find('{', from);
    const std::size_t close = open == std::string::npos ? open : text.find('}', open);
    if (close == std::string::npos) return worded + text.substr(from);
    const auto quantity = quantityOf(book, std::string_view(text).substr(open + 1, close - open - 1));
    worded += text.substr(from, open - from) + quantity.value_or(text.substr(open, close - open + 1));
    from = close + 1;
  }
}

void wordSide(const text::Phrasebook& book, planning::LessonCase& side) {
  const double lengthM = side.cord.length ? side.cord.length->value.si() : 0.0;
  side.name = lessonText(book, side.name, {{"length_m", lengthM}});
  side.machine.name = lessonText(book, side.machine.name);
  side.sharedName = lessonText(book, side.sharedName);
  if (side.pad) side.pad->name = lessonText(book, side.pad->name);
}

}  // namespace

std::string lessonText(const text::Phrasebook& book, const std::string& text, const base::Arguments& arguments) {
  return book.has(text) ? book.say(text, arguments) : withQuantities(book, text);
}

planning::Lesson wordedLesson(const text::Phrasebook& book, const planning::Lesson& lesson) {
  planning::Lesson worded = lesson;
  for (std::string* text : {&worded.title, &worded.watch, &worded.shows}) *text = lessonText(book, *text);
  for (planning::LessonCase& side : worded.sides) wordSide(book, side);
  for (planning::LessonStep& step : worded.steps) step.text = lessonText(book, step.text);
  if (!worded.question) return worded;
  worded.question->text = lessonText(book, worded.question->text);
  worded.question->because = lessonText(book, worded.question->because);
  for (planning::LessonAnswer& answer : worded.question->answers) answer.text = lessonText(book, answer.text);
  return worded;
}

}  // namespace cordreach::app
