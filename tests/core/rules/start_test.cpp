// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "tiny_site.h"

namespace cordreach::rules {
namespace {

study::StartAnswer soundStart() {
  study::StartAnswer start;
  start.peak = sharp(90.0 * ampere);
  start.settled = sharp(15.0 * ampere);
  start.time = {1.5 * second, 1.0 * second, 2.0 * second};
  start.lowest = sharp(80.0 * volt);
  start.trip = physics::TripTimes{};
  return start;
}

study::Dip dipTo(double volts) { return {118.0 * volt, sharp(volts * volt), 120.0 * volt}; }

TEST(StartNever, IsWhatWouldRunAndCannotGetThere) {
  TinySite tiny;
  tiny.given().start = soundStart();
  EXPECT_EQ(tiny.verdict(), Severity::Ok);
  tiny.given().start->time.likely.reset();
  ASSERT_EQ(tiny.found("start.never").size(), 1u);
  EXPECT_EQ(tiny.verdict(), Severity::Warning);
  tiny.given().stalledCold = true;
  EXPECT_FALSE(tiny.has("start.never"));
  EXPECT_TRUE(tiny.has("machine.stall"));
}

TEST(StartNever, IsNotToldForTheHardEndOnly) {
  TinySite tiny;
  tiny.given().start = soundStart();
  tiny.given().start->time.hard.reset();
  EXPECT_FALSE(tiny.has("start.never"));
}

TEST(StartTrips, IsTheLikelyCurveWithinTheLikelyStart) {
  TinySite tiny;
  tiny.given().start = soundStart();
  tiny.given().start->trip = physics::TripTimes{0.01 * second, {}, {}};
  EXPECT_FALSE(tiny.has("start.trips"));
  tiny.given().start->trip = physics::TripTimes{0.01 * second, 1.2 * second, {}};
  ASSERT_EQ(tiny.found("start.trips").size(), 1u);
  EXPECT_EQ(tiny.verdict(), Severity::Caution);
  EXPECT_EQ(tiny.found("start.trips")[0].why.front().code, "start.draws");
  tiny.given().start->trip.reset();
  EXPECT_FALSE(tiny.has("start.trips"));
}

TEST(StartDips, CountWhereSomethingElseIsOn) {
  TinySite tiny;
  tiny.addLoad("v1", "Cold vending", 8.0);
  tiny.given().start = soundStart();
  tiny.given().start->dips = {{{}, site::FixedLoadId("v1"), dipTo(112.0)}};
  EXPECT_FALSE(tiny.has("start.dips"));  // 5 % of nominal, just
  tiny.given().start->dips.front().dip = dipTo(111.9);
  ASSERT_EQ(tiny.found("start.dips").size(), 1u);
  const Finding finding = tiny.found("start.dips")[0];
  EXPECT_EQ(finding.severity, Severity::Notice);
  EXPECT_EQ(finding.subjects.back(), (Subject{SubjectKind::FixedLoad, "v1"}));
}

TEST(StartTripsEarly, IsTheEarliestCurveAlone) {
  TinySite tiny;
  tiny.given().start = soundStart();
  tiny.given().start->trip = physics::TripTimes{0.8 * second, {}, {}};
  ASSERT_EQ(tiny.found("start.trips_early").size(), 1u);
  EXPECT_EQ(tiny.verdict(), Severity::Notice);
  tiny.given().start->trip->likely = 1.2 * second;
  EXPECT_FALSE(tiny.has("start.trips_early"));
  EXPECT_TRUE(tiny.has("start.trips"));
}

TEST(StartTrips, IsNotToldOfAMachineThatCannotRun) {
  TinySite tiny;
  tiny.given().start = soundStart();
  tiny.given().start->trip = physics::TripTimes{0.01 * second, 1.2 * second, {}};
  tiny.given().stalledCold = true;
  EXPECT_FALSE(tiny.has("start.trips"));
  EXPECT_TRUE(tiny.has("machine.stall"));
}

study::LoadStart coolerStart(TinySite& tiny) {
  tiny.addLoad("v1", "Cold vending", 8.0);
  return {site::FixedLoadId("v1"), site::CircuitId("c1"), {}, soundStart()};
}

TEST(StartTrips, IsToldOfWhatComesOnBesideAMachine) {
  TinySite tiny;
  study::LoadStart start = coolerStart(tiny);
  tiny.answer.loadStarts = {start};
  EXPECT_FALSE(tiny.has("start.trips"));
  start.start.trip = physics::TripTimes{0.01 * second, 0.5 * second, {}};
  tiny.answer.loadStarts = {start};
  ASSERT_EQ(tiny.found("start.trips").size(), 1u);
  const Finding finding = tiny.found("start.trips")[0];
  EXPECT_EQ(finding.subjects.front(), (Subject{SubjectKind::Circuit, "c1"}));
  EXPECT_EQ(finding.subjects.at(1), (Subject{SubjectKind::FixedLoad, "v1"}));
  EXPECT_EQ(tiny.verdict(), Severity::Caution);
}

TEST(StartDips, AreToldOfWhatComesOnOnlyWhereAMachineSeesThem) {
  TinySite tiny;
  study::LoadStart start = coolerStart(tiny);
  start.start.dips = {{{}, site::FixedLoadId("v1"), dipTo(100.0)}, {site::HookupId("h1"), {}, dipTo(112.0)}};
  tiny.answer.loadStarts = {start};
  EXPECT_FALSE(tiny.has("start.dips"));
  start.start.dips.back().dip = dipTo(111.9);
  tiny.answer.loadStarts = {start};
  EXPECT_EQ(tiny.found("start.dips").size(), 1u);
}

}  // namespace
}  // namespace cordreach::rules
