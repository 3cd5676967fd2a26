// SPDX-License-Identifier: GPL-3.0-or-later
#include "compute/heat_answer.h"

#include <gtest/gtest.h>

#include <atomic>

#include "io/lesson_file.h"

namespace cordreach::app {
namespace {

HeatAsked askedOf(const char* file) {
  const planning::Lesson lesson = io::loadLesson(file).value();
  return {{lesson.sides.at(0), lesson.sides.at(1)}, 10.0 * units::minute};
}

TEST(HeatAnswer, IsWhatTheRulesAndTheDemonstrationSayOfEachSide) {
  const HeatAsked asked = askedOf("resources/lessons/1-coil.json");
  HeatMemory memory;
  const auto answer = memory.answer(asked, {});
  ASSERT_TRUE(answer.has_value());
  for (std::size_t side = 0; side < kSides; ++side) {
    const HeatSide& worked = *answer->sides.at(side);
    EXPECT_EQ(worked.setup, asked.setups.at(side));
    EXPECT_EQ(worked.verdict.severity, planning::judgeLesson(asked.setups.at(side), "A").severity);
    const auto shown = planning::demonstrateLesson(asked.setups.at(side), asked.run);
    EXPECT_EQ(worked.demonstration.points.size(), shown.points.size());
    EXPECT_EQ(worked.demonstration.points.back().current, shown.points.back().current);
  }
}

TEST(HeatAnswer, SaysWhatABadlyLyingCordWouldComeToOnTheFloor) {
  HeatMemory memory;
  const auto answer = memory.answer(askedOf("resources/lessons/1-coil.json"), {});
  ASSERT_TRUE(answer.has_value());
  const HeatSide& coil = *answer->sides.at(0);
  const HeatSide& floor = *answer->sides.at(1);
  ASSERT_TRUE(coil.laidOut.has_value());
  EXPECT_FALSE(floor.laidOut.has_value());
  const auto& onFloor = floor.verdict.answer.find(planning::lessonHookup())->cords.front().conductor;
  EXPECT_NEAR(coil.laidOut->celsius(), onFloor->likely.celsius(), 1e-9);
}

TEST(HeatAnswer, IsNotWorkedOutTwice) {
  HeatMemory memory;
  HeatAsked asked = askedOf("resources/lessons/2-thin.json");
  const auto first = memory.answer(asked, {});
  asked.setups[0].laying.laying = tables::Laying::Covered;
  const auto other = memory.answer(asked, {});
  asked.setups[0].laying.laying = tables::Laying::Floor;
  const auto again = memory.answer(asked, {});
  ASSERT_TRUE(first && other && again);
  EXPECT_NE(other->sides[0], first->sides[0]);
  EXPECT_EQ(other->sides[1], first->sides[1]);
  EXPECT_EQ(again->sides[0], first->sides[0]);
}

TEST(HeatAnswer, EndsWhenItIsStopped) {
  const std::atomic<bool> stop = true;
  HeatMemory memory;
  EXPECT_FALSE(memory.answer(askedOf("resources/lessons/1-coil.json"), {&stop, {}}).has_value());
}

}  // namespace
}  // namespace cordreach::app
