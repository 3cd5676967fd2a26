// SPDX-License-Identifier: GPL-3.0-or-later
// Clock times as typed.
#include "units/time_of_day.h"

#include <gtest/gtest.h>

#include "base/contract.h"

namespace cordreach::units {
namespace {

int minutesOf(std::string_view text) {
  const auto time = parseTimeOfDay(text);
  return time.ok() ? time.value().minutes() : -1;
}

TEST(ParseTimeOfDay, ReadsBothClocks) {
  for (const auto text : {"18:15", " 18:15 ", "18h15", "6:15 pm", "6:15PM", "06:15 p.m."}) {
    EXPECT_EQ(minutesOf(text), 1095) << text;
  }
  EXPECT_EQ(minutesOf("6pm"), 1080);
  EXPECT_EQ(minutesOf("12 am"), 0);
  EXPECT_EQ(minutesOf("12:30 pm"), 750);
  EXPECT_EQ(minutesOf("0:00"), 0);
  EXPECT_EQ(minutesOf("24:00"), 1440);
}

TEST(ParseTimeOfDay, RefusesWhatIsNoTime) {
  for (const auto text :
       {"25:00", "24:01", "18:60", "18:5", "18", "18:", "13 pm", "0 am", "6:15 xm", "-6:15", "18:15:00"}) {
    const auto time = parseTimeOfDay(text);
    ASSERT_FALSE(time.ok()) << text;
    EXPECT_EQ(time.error(), (base::Error{"units.not_a_time", text, {}}));
  }
  EXPECT_EQ(parseTimeOfDay("").error().code, "units.empty");
}

TEST(TimeOfDay, ReadsBackWhatItPrints) {
  for (int minutes = 0; minutes <= 1440; ++minutes) {
    const auto time = TimeOfDay::fromMinutes(minutes);
    EXPECT_EQ(minutesOf(time.plain()), minutes);
    EXPECT_EQ(time.plain().size(), 5u);
  }
  EXPECT_THROW(static_cast<void>(TimeOfDay::fromMinutes(1441)), base::ContractFailure);
}

}  // namespace
}  // namespace cordreach::units
