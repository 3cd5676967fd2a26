// SPDX-License-Identifier: GPL-3.0-or-later
// Starts in small buildings, against arithmetic that can be followed by hand.
#include "study/start_study.h"

#include <gtest/gtest.h>

#include <cmath>

#include "study/assess.h"
#include "support/small_site.h"

namespace cordreach::study {
namespace {

using tables::LoadClass;
using testing::SmallSite;
using units::ampere;
using units::volt;

StartStudy started(const SmallSite& building, const char* hookup) {
  return startStudyOf(building.site, building.site.at<site::Hookup>(site::HookupId(hookup))).value();
}

SmallSite alone(LoadClass loadClass = LoadClass::RectifiedDc, double runFt = 60) {
  return SmallSite().circuit("1", 20, runFt).machine("M", loadClass, 14.6).plug("M", SmallSite::at("1"));
}

// 12 AWG 5.31 ohm/km over 2 × 18.3 m, 14 AWG 8.45 over 2 × 15.2 m (at 20 °C; the wall is at 30 °C), 0.06 of source and
// a few milliohms of plug contacts.
TEST(StartStudy, SeesTheSumOfAllThatStandsInFront) {
  const StartStudy study = started(alone(), "HM");
  EXPECT_NEAR(study.supply.openV, 120.0, 1e-6);
  EXPECT_NEAR(study.supply.ohm.real(), 0.06 + 36.576 * 5.31e-3 * 1.04 + 30.48 * 8.45e-3 * 1.02, 0.02);
  EXPECT_GT(study.supply.ohm.imag(), 0.0);
  EXPECT_LT(study.supply.ohm.imag(), 0.03);
}

TEST(StartStudy, DipsAsItsAmpsTimesWhatIsShared) {
  auto building = alone();
  building.circuit("2", 20, 40).machine("N", LoadClass::Resistance, 2).plug("N", SmallSite::at("2"));
  const StartStudy study = started(building, "HM");
  ASSERT_EQ(study.answer.dips.size(), 1u);
  const Dip& other = study.answer.dips.front().dip;
  // Only the source's 0.06 ohm is shared; N itself costs it 0.1 V more.
  const double lost = (other.before - other.during.likely).in(volt);
  const double peakA = std::abs(study.likely.samples.front().currentA);
  EXPECT_NEAR(lost, 0.06 * peakA, 0.05 * 0.06 * peakA);
  EXPECT_NEAR((study.answer.panel.before - study.answer.panel.during.likely).in(volt), lost, 0.1);
  EXPECT_GT(study.answer.outlet.share(), study.answer.panel.share());
}

TEST(StartStudy, ABurnisherNextToNothingElseHolds) {
  const Answer answer = assess(alone().site);
  const StartAnswer& start = *answer.find(site::HookupId("HM"))->start;
  EXPECT_TRUE(start.tipped);
  EXPECT_TRUE(start.dips.empty());
  ASSERT_TRUE(start.trip.has_value());
  EXPECT_FALSE(start.trip->likely.has_value());
  EXPECT_GT(start.time.likely->si(), 1.0);
  EXPECT_LT(start.time.likely->si(), 3.0);
}

TEST(StartStudy, SumsToTheAnswerOfAssess) {
  const auto building = alone(LoadClass::Universal);
  const StartStudy study = started(building, "HM");
  const Answer answer = assess(building.site);
  const StartAnswer& start = *answer.find(site::HookupId("HM"))->start;
  EXPECT_NEAR(start.peak.likely.si(), study.answer.peak.likely.si(), 1e-9);
  EXPECT_NEAR(start.outlet.during.likely.si(), study.answer.outlet.during.likely.si(), 1e-9);
}

TEST(StartStudy, StatedInertiaSharpensTheBand) {
  auto building = alone();
  site::Machine machine = building.site.at<site::Machine>(site::MachineId("M"));
  machine.inertiaKgM2 = site::known(0.2);
  building.site.all<site::Machine>().put(machine);
  const StartStudy taken = started(alone(), "HM");
  const StartStudy stated = started(building, "HM");
  EXPECT_FALSE(taken.answer.inertiaStated);
  EXPECT_TRUE(stated.answer.inertiaStated);
  EXPECT_NEAR(stated.answer.time.likely->si() / taken.answer.time.likely->si(), 0.2 / 0.107, 1e-6);
}

TEST(StartStudy, ALongThinCordKeepsALoadedMachineFromComingUp) {
  auto building = SmallSite().circuit("1", 20, 60).machine("M", LoadClass::Induction, 14.5);
  building.cord("C", 16, 100, 1).extension("C", "1").plug("M", SmallSite::in("C", 0));
  site::Machine machine = building.site.at<site::Machine>(site::MachineId("M"));
  machine.kind = "slow-machine";
  building.site.all<site::Machine>().put(machine);
  const StartStudy study = started(building, "HM");
  EXPECT_FALSE(study.answer.time.likely.has_value());
  EXPECT_TRUE(study.answer.trip->earliest.has_value());
  EXPECT_GT(study.answer.settled.likely, 30.0 * ampere);
}

TEST(StartStudy, WhatIsOffDoesNotStart) {
  auto building = alone();
  site::Hookup hookup = building.site.at<site::Hookup>(site::HookupId("HM"));
  hookup.off = true;
  building.site.all<site::Hookup>().put(hookup);
  EXPECT_FALSE(startStudyOf(building.site, hookup).has_value());
}

}  // namespace
}  // namespace cordreach::study
