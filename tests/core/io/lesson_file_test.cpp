// SPDX-License-Identifier: GPL-3.0-or-later
// Lessons from text: the prepared ones are sound, and whatever is wrong with a file is named with its place.
#include "io/lesson_file.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <set>

namespace cordreach::io {
namespace {

constexpr std::string_view kSmall = R"({
  "version": 1, "title": "T", "watch": "W", "shows": "S", "for": "30 min",
  "outlet": {"breaker": "15 A", "run": "40 ft", "wire": "14 AWG"},
  "machine": {"name": "M", "class": "induction", "amps": "12 A", "cord": "SJT 14/3", "length": "50 ft"},
  "sides": [
    {"cord": "SJTW 16/3", "length": "50 ft", "lies": "coiled", "turns": 12, "wound": "20 ft"},
    {"cord": "SJTW 12/3 105C", "length": "30 m", "outlet": {"supply": "110 V"}, "machine": {"class": "universal"}}
  ],
  "steps": [{"text": "look", "at": "5 min", "a": 2, "b": 1}],
  "question": {"text": "Q", "answers": [{"text": "yes"}, {"text": "no", "right": true}], "because": "so"}
})";

std::string with(std::string_view from, std::string_view to) {
  std::string text(kSmall);
  const std::size_t at = text.find(from);
  EXPECT_NE(at, std::string::npos) << from;
  return text.replace(at, from.size(), to);
}

void expectFault(const std::string& text, std::string_view code, std::string_view place) {
  const auto read = readLesson(text);
  ASSERT_FALSE(read.ok()) << code;
  EXPECT_EQ(read.error().code, code);
  EXPECT_EQ(read.error().place, place);
}

TEST(LessonFile, ReadsWhatItSays) {
  const auto read = readLesson(kSmall);
  ASSERT_TRUE(read.ok()) << read.error().code << " " << read.error().place;
  const planning::Lesson& lesson = read.value();
  EXPECT_EQ(lesson.run, 30.0 * units::minute);
  ASSERT_EQ(lesson.sides.size(), 2U);
  EXPECT_EQ(lesson.sides[0].laying, (site::LayingOfCord{tables::Laying::Coiled, 12.0, 20.0 * units::foot}));
  EXPECT_EQ(lesson.sides[0].breaker, 15.0 * units::ampere);
  EXPECT_EQ(lesson.sides[1].cord.rating->value.celsius(), 105.0);
  EXPECT_EQ(lesson.sides[1].supply->value, 110.0 * units::volt);
  EXPECT_FALSE(lesson.sides[0].supply.has_value());
  EXPECT_EQ(lesson.sides[1].machine.inlets[0].loadClass, tables::LoadClass::Universal);
  EXPECT_EQ(lesson.sides[0].machine.inlets[0].loadClass, tables::LoadClass::Induction);
  EXPECT_EQ(lesson.steps[0].a, 1U);
  EXPECT_TRUE(lesson.question->answers[1].right);
}

TEST(LessonFile, NamesWhatIsWrongAndWhere) {
  expectFault(with("\"title\"", "\"titel\""), "lesson.missing_key", "");
  expectFault(with("\"at\"", "\"when\""), "lesson.unknown_key", "/steps/0");
}

TEST(LessonFile, RefusesEachSortOfFault) {
  expectFault("{\"title\": \"T\"}", "lesson.no_version", "");
  expectFault(with("\"version\": 1", "\"version\": 2"), "lesson.newer_version", "/version");
  expectFault(with("\"12 A\"", "\"12 B\""), "lesson.bad_value", "/machine/amps");
  expectFault(with("\"12 A\"", "\"120 A\""), "lesson.out_of_range", "/machine/amps");
  expectFault(with("\"coiled\"", "\"knotted\""), "lesson.unknown_word", "/sides/0/lies");
  expectFault(with("\"turns\": 12", "\"turns\": 0"), "lesson.out_of_range", "/sides/0/turns");
  expectFault(with("\"turns\": 12", "\"turns\": \"12\""), "lesson.wrong_type", "/sides/0/turns");
  expectFault(with("SJTW 16/3", "SJTW"), "lesson.no_cord_size", "/sides/0/cord");
  expectFault(with("SJTW 16/3", "SJTW 16/3 blue"), "lesson.unread_print", "/sides/0/cord");
  expectFault(with("\"a\": 2", "\"a\": 3"), "lesson.out_of_range", "/steps/0/a");
  expectFault(with("\"W\"", "\"" + std::string(500, 'w') + "\""), "lesson.text_too_long", "/watch");
  expectFault(with("[{\"text\": \"yes\"}, ", "["), "lesson.bad_count", "/question/answers");
  expectFault("{\"version\": 1", "file.truncated", "");
  expectFault(std::string(300u << 10, ' '), "lesson.too_large", "");
}

TEST(LessonFile, AskForTheCordThatIsMissing) {
  expectFault(with("\"cord\": \"SJTW 16/3\", \"length\": \"50 ft\", \"lies\"", "\"lies\""), "lesson.missing_key",
              "/sides/0");
}

TEST(LessonFile, TheDocumentedOneReads) {
  std::ifstream file("docs/lessons.md");
  const std::string page{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
  const std::size_t from = page.find("```json\n") + 8;
  const auto read = readLesson(std::string_view(page).substr(from, page.find("```", from) - from));
  ASSERT_TRUE(read.ok()) << read.error().code << " " << read.error().place;
  EXPECT_EQ(read.value().steps.at(0).b, 1U);
}

TEST(LessonFile, EveryPreparedLessonReadsAndItsSidesAreAnswered) {
  std::set<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator("resources/lessons")) files.insert(entry.path());
  EXPECT_GE(files.size(), 8U);
  for (const auto& path : files) {
    const auto lesson = loadLesson(path);
    ASSERT_TRUE(lesson.ok()) << path << " " << lesson.error().code << " " << lesson.error().place;
    EXPECT_FALSE(lesson.value().steps.empty()) << path;
    ASSERT_TRUE(lesson.value().question.has_value()) << path;
    int right = 0;
    for (const auto& answer : lesson.value().question->answers) right += answer.right ? 1 : 0;
    EXPECT_EQ(right, 1) << path;
    for (const auto& side : lesson.value().sides) {
      const auto shown = planning::demonstrateLesson(side, units::minute);
      EXPECT_GT(shown.points.back().current, 1.0 * units::ampere) << path;
    }
  }
}

}  // namespace
}  // namespace cordreach::io
