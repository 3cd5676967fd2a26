// SPDX-License-Identifier: GPL-3.0-or-later
// What the planned day's course adds to the answer by moments, in small buildings.
#include "study/day_answer.h"

#include <gtest/gtest.h>

#include "study/assess.h"
#include "study/day_run.h"
#include "support/small_site.h"

namespace cordreach::study {
namespace {

using tables::LoadClass;
using testing::SmallSite;
using units::ampere;
using units::hour;
using units::minute;

Answer byMoments(const site::Site& site) {
  StudyOptions options;
  options.inTime = false;
  return assess(site, options);
}

SmallSite heaterOnACord(int gauge = 16) {
  return SmallSite()
      .circuit("1", 20, 30)
      .machine("M", LoadClass::Resistance, 12)
      .cord("C", gauge, 50)
      .extension("C", "1")
      .plug("M", SmallSite::in("C"), {{18.0, 21.0}});
}

void coilAt(site::Site& site, double hours) {
  site.all<site::Event>().put({.id = site::EventId("coiled"),
                               .kind = site::EventKind::Lay,
                               .at = hours * hour,
                               .extension = site::ExtensionUseId("XC"),
                               .laying = {tables::Laying::Coiled, 12.0, {}}});
}

TEST(DayAnswer, KnowsACordThatIsCoiledLater) {
  auto building = heaterOnACord();
  coilAt(building.site, 19.0);
  const CordAnswer before = byMoments(building.site).hookups[0].cords[0];
  EXPECT_LT(before.conductor->likely, before.limit);
  EXPECT_FALSE(before.limitAt.has_value());
  const CordAnswer cord = assess(building.site).hookups[0].cords[0];
  EXPECT_GT(cord.conductor->likely, cord.limit);
  EXPECT_GE(cord.conductor->high - cord.conductor->likely, before.conductor->high - before.conductor->likely);
  ASSERT_TRUE(cord.limitAt.has_value());
  EXPECT_GT(cord.limitAt->in(hour), 19.0);
  EXPECT_LT(cord.limitAt->in(hour), 20.0);
  ASSERT_TRUE(cord.timeToLimit.has_value());
}

TEST(DayAnswer, IsTheAnswerByMomentsWhereNothingHappensBetween) {
  const auto building = heaterOnACord();
  const CordAnswer before = byMoments(building.site).hookups[0].cords[0];
  const CordAnswer cord = assess(building.site).hookups[0].cords[0];
  EXPECT_NEAR(cord.conductor->likely.celsius(), before.conductor->likely.celsius(), 0.3);
  EXPECT_FALSE(cord.limitAt.has_value());
}

// Two machines, one after the other on the same coil, which a single one does not bring to its rating in time.
TEST(DayAnswer, RemembersWhatACordWentThroughBefore) {
  auto building = SmallSite()
                      .circuit("1", 20, 30)
                      .machine("M", LoadClass::Resistance, 12)
                      .machine("N", LoadClass::Resistance, 12)
                      .cord("C", 14, 50);
  building.extension("C", "1", {tables::Laying::Coiled, 12.0, {}});
  building.plug("M", SmallSite::in("C"), {{18.0, 18.25}}).plug("N", SmallSite::in("C"), {{18.25, 18.5}});
  const Answer before = byMoments(building.site);
  const Answer answer = assess(building.site);
  const auto at = [](const Answer& of, std::size_t i) { return of.hookups[i].cords[0].conductor->likely.celsius(); };
  EXPECT_NEAR(at(answer, 0), at(before, 0), 0.5);
  EXPECT_GT(at(answer, 1), at(before, 1) + 5.0);
}

// By moments the cooler's four minutes are over before the breaker acts; the next time it comes on it is still warm.
SmallSite coolerBesideAHeater() {
  return SmallSite()
      .circuit("1", 20, 30)
      .load("cooler", "1", 10.85, site::Cycle{4.0 * minute, 1.0 * minute, 18.0 * hour})
      .machine("M", LoadClass::Resistance, 14.5, 12, 25)
      .plug("M", SmallSite::at("1"), {{18.0, 20.0}});
}

TEST(DayAnswer, AddsUpWhatABreakerWentThrough) {
  const auto building = coolerBesideAHeater();
  const BreakerAnswer before = byMoments(building.site).circuits[0].breaker;
  ASSERT_TRUE(before.trip->likely.has_value());
  EXPECT_GT(*before.trip->likely, before.run);
  const Answer answer = assess(building.site);
  for (const BreakerAnswer& breaker : {answer.circuits[0].breaker, answer.hookups[0].breaker}) {
    ASSERT_TRUE(breaker.trip->likely.has_value());
    EXPECT_LE(*breaker.trip->likely, breaker.run);
    ASSERT_TRUE(breaker.tripsAt.has_value());
    EXPECT_GT(*breaker.tripsAt, 18.0 * hour + 5.0 * minute);
    EXPECT_GE(*breaker.trip->likely, *breaker.trip->earliest);
  }
}

TEST(DayAnswer, SaysWhenAsTheRunDoes) {
  const auto building = coolerBesideAHeater();
  const DayRun run = runDay(building.site);
  const BreakerAnswer breaker = assess(building.site).circuits[0].breaker;
  ASSERT_TRUE(run.circuits[0].trip->likely.has_value());
  EXPECT_NEAR(breaker.tripsAt->si(), (run.start + *run.circuits[0].trip->likely).si(), 1e-6);
  EXPECT_NEAR(breaker.trip->likely->si(), run.circuits[0].likelySince.si(), 1e-6);
}

// Nobody knows when the cooler comes on: in the one course it comes on when the machine is gone.
TEST(DayAnswer, DoesNotSpareWhatTheCourseHappensToMiss) {
  auto building = SmallSite()
                      .circuit("1", 20, 30)
                      .load("cooler", "1", 12, site::Cycle{10.0 * minute, 120.0 * minute})
                      .machine("M", LoadClass::Resistance, 15)
                      .plug("M", SmallSite::at("1"), {{18.0, 18.5}});
  const BreakerAnswer breaker = assess(building.site).circuits[0].breaker;
  EXPECT_EQ(breaker.trip, byMoments(building.site).circuits[0].breaker.trip);
  EXPECT_LE(*breaker.trip->likely, breaker.run);
  EXPECT_FALSE(breaker.tripsAt.has_value());
}

TEST(DayAnswer, LeavesWhatHasNoHoursToItsTwoHours) {
  auto building = SmallSite()
                      .circuit("1", 20, 30)
                      .circuit("2", 20, 30)
                      .machine("M", LoadClass::Resistance, 5)
                      .machine("N", LoadClass::Resistance, 12, 16, 80)
                      .plug("M", SmallSite::at("1"), {{12.0, 23.0}})
                      .plug("N", SmallSite::at("2"));
  EXPECT_EQ(assess(building.site).find(site::HookupId("HN"))->cords[0].conductor,
            byMoments(building.site).find(site::HookupId("HN"))->cords[0].conductor);
}

TEST(DayAnswer, StallsWithThePadThatIsChangedLater) {
  auto building = SmallSite()
                      .circuit("1", 20, 60)
                      .machine("M", LoadClass::Induction, 14)
                      .plug("M", SmallSite::at("1"), {{18.0, 20.0}});
  site::Pad heavy{.id = site::PadId("P"), .name = "Coarse"};
  heavy.dragFactor = site::known(3.0);
  building.site.all<site::Pad>().put(heavy);
  building.site.all<site::Event>().put({.id = site::EventId("e1"),
                                        .kind = site::EventKind::ChangePad,
                                        .at = 19.0 * hour,
                                        .hookup = site::HookupId("HM"),
                                        .pad = heavy.id});
  const HookupAnswer before = byMoments(building.site).hookups[0];
  EXPECT_FALSE(before.stalledCold || before.stalledWarm);
  const HookupAnswer hookup = assess(building.site).hookups[0];
  EXPECT_TRUE(hookup.stalledWarm);
  ASSERT_TRUE(hookup.stalledAt.has_value());
  EXPECT_EQ(hookup.stalledAt->in(hour), 19.0);
  EXPECT_GT(hookup.current.likely, 2.0 * before.current.likely);
  EXPECT_LT(hookup.voltage.likely, before.voltage.likely);
}

// Two circuits of 20 A behind a main of 20 A, and a heater of 15 A for each.
SmallSite behindASmallMain() {
  auto building = SmallSite().circuit("1", 20, 30).circuit("2", 20, 30);
  site::Panel panel = building.site.at<site::Panel>(site::PanelId("P"));
  panel.mainRating = site::known(20.0 * ampere);
  building.site.all<site::Panel>().put(panel);
  building.machine("M", LoadClass::Resistance, 15).machine("N", LoadClass::Resistance, 15);
  return building;
}

TEST(DayAnswer, TellsOfAPanelsMain) {
  auto building = behindASmallMain();
  building.plug("M", SmallSite::at("1"), {{18.0, 20.0}}).plug("N", SmallSite::at("2"), {{18.5, 20.0}});
  const Answer answer = assess(building.site);
  ASSERT_EQ(answer.mains.size(), 1U);
  EXPECT_EQ(answer.mains[0].id, site::PanelId("P"));
  EXPECT_EQ(answer.mains[0].hookups.size(), 2U);
  ASSERT_TRUE(answer.mains[0].breaker.tripsAt.has_value());
  EXPECT_GT(*answer.mains[0].breaker.tripsAt, 18.5 * hour);
  EXPECT_EQ(answer.mains[0].moment, 18.5 * hour);
  EXPECT_FALSE(answer.circuits[0].breaker.tripsAt.has_value());
}

TEST(DayAnswer, TellsOfAPanelsMainWithoutAnyHours) {
  auto building = behindASmallMain();
  building.plug("M", SmallSite::at("1"));
  EXPECT_TRUE(assess(building.site).mains.empty());
  building.plug("N", SmallSite::at("2"));
  const Answer answer = assess(building.site);
  ASSERT_EQ(answer.mains.size(), 1U);
  EXPECT_EQ(answer.mains[0].hookups.size(), 2U);
  const units::Current both = answer.hookups[0].current.likely + answer.hookups[1].current.likely;
  EXPECT_NEAR(answer.mains[0].breaker.current.in(ampere), both.in(ampere), 1e-6);
  EXPECT_TRUE(answer.mains[0].breaker.trip->likely.has_value());
  EXPECT_FALSE(answer.mains[0].moment.has_value());
}

TEST(DayAnswer, AShortHeavyMomentDoesNotHideALongOneThatTripsTheMain) {
  auto building = behindASmallMain();
  building.machine("K", LoadClass::Resistance, 12).machine("S", LoadClass::Resistance, 14);
  building.plug("K", SmallSite::at("1"), {{8.0, 14.0}}).plug("M", SmallSite::at("2"), {{8.0, 14.0}});
  const Answer longOnly = byMoments(building.site);
  ASSERT_EQ(longOnly.mains.size(), 1U);
  EXPECT_TRUE(longOnly.mains[0].breaker.trip->likely.has_value());
  building.plug("S", SmallSite::at("1"), {{16.0, 16.02}}).plug("N", SmallSite::at("2"), {{16.0, 16.02}});
  const Answer both = byMoments(building.site);
  ASSERT_EQ(both.mains.size(), 1U);
  EXPECT_EQ(both.mains[0].moment, 8.0 * hour);
}

TEST(DayAnswer, AMainCarriesOneLegOfASplitPhaseAtATime) {
  auto building = behindASmallMain();
  site::Circuit other = building.site.at<site::Circuit>(site::CircuitId("2"));
  other.phases = {1};
  building.site.all<site::Circuit>().put(other);
  building.plug("M", SmallSite::at("1")).plug("N", SmallSite::at("2"));
  const Answer answer = assess(building.site);
  EXPECT_GT(answer.hookups[1].current.likely.in(ampere), 10.0);
  EXPECT_TRUE(answer.mains.empty());
}

}  // namespace
}  // namespace cordreach::study
