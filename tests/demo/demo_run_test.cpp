// SPDX-License-Identifier: GPL-3.0-or-later
// The evening in time: the planted faults happen when they should, after what causes them.
#include <gtest/gtest.h>

#include "demo/demo.h"
#include "study/day_run.h"

namespace cordreach::demo {
namespace {

using study::DayEvent;
using study::DayEventKind;
using study::DaySubject;
using units::hour;
using units::minute;

const study::DayRun& evening() {
  static const study::DayRun run = [] {
    study::DayRunOptions options;
    options.until = 4.0 * hour;
    return study::runDay(building(), options);
  }();
  return run;
}

const DayEvent* happened(DayEventKind kind, const DaySubject& subject) {
  for (const DayEvent& event : evening().events) {
    if (event.kind == kind && event.subject == subject) return &event;
  }
  return nullptr;
}

double clockMinutes(const DayEvent& event) { return (evening().start + event.at - 18.0 * hour).in(minute); }

TEST(DemoInTime, TripsTheCorridorMinutesAfterTheVendingMachineStarts) {
  const DayEvent* trip = happened(DayEventKind::Trip, site::CircuitId("1A-3"));
  ASSERT_NE(trip, nullptr);
  ASSERT_TRUE(trip->after.has_value());
  EXPECT_EQ(*trip->after, DaySubject(site::FixedLoadId("L02")));
  EXPECT_NEAR((evening().start + trip->at - trip->since).in(hour), 19.0 + 40.0 / 60.0, 1e-9);
  EXPECT_GT(trip->since.in(minute), 1.0);
  EXPECT_LT(trip->since.in(minute), 7.0);  // before its compressor rests again
}

TEST(DemoInTime, SoftensTheCoilAboutAQuarterOfAnHourIn) {
  const DayEvent* over = happened(DayEventKind::OverRating, site::CordId("C09"));
  ASSERT_NE(over, nullptr);
  EXPECT_EQ(*over->after, DaySubject(site::HookupId("H07")));
  EXPECT_NEAR(over->since.in(minute), 15.0, 4.0);
  EXPECT_NEAR(clockMinutes(*over), 45.0, 4.0);
}

TEST(DemoInTime, TripsTheOthersWhenTheirMachineStarts) {
  const DayEvent* thin = happened(DayEventKind::Trip, site::CircuitId("1A-4"));
  ASSERT_NE(thin, nullptr);
  EXPECT_EQ(*thin->after, DaySubject(site::HookupId("H05")));
  const DayEvent* wrongMap = happened(DayEventKind::Trip, site::CircuitId("2A-6"));
  ASSERT_NE(wrongMap, nullptr);
  EXPECT_GT(clockMinutes(*wrongMap), 120.0);
  EXPECT_LT(clockMinutes(*wrongMap), 130.0);
}

TEST(DemoInTime, LeavesSoundHookupsAlone) {
  for (const char* id : {"1A-1", "2A-1"}) EXPECT_EQ(happened(DayEventKind::Trip, site::CircuitId(id)), nullptr) << id;
  for (const DayEvent& event : evening().events) EXPECT_NE(event.kind, DayEventKind::Stall);
  for (const study::DayCord& cord : evening().cords) {
    if (cord.subject == DaySubject(site::CordId("C09"))) continue;
    EXPECT_FALSE(cord.limitAt.has_value());
  }
}

}  // namespace
}  // namespace cordreach::demo
