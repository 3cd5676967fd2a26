// SPDX-License-Identifier: GPL-3.0-or-later
// A demonstration against what it must agree with: the study's own answer at rest, the cord's steady heat, the
// breaker's trip times.
#include "study/demonstration.h"

#include <gtest/gtest.h>

#include <cmath>

#include "physics/cord_heat.h"
#include "study/assess.h"
#include "study/assumptions.h"
#include "support/small_site.h"

namespace cordreach::study {
namespace {

using tables::Laying;
using tables::LoadClass;
using testing::SmallSite;
using units::ampere;
using units::Duration;
using units::hour;
using units::minute;
using units::second;
using units::volt;

const site::HookupId kHookup("HM");

site::Site burnisherOn(int awg, double feet, LoadClass loadClass, double amps, const site::LayingOfCord& laying = {}) {
  SmallSite building;
  building.circuit("1", 20, 60)
      .machine("M", loadClass, amps)
      .cord("C", awg, feet)
      .extension("C", "1")
      .plug("M", SmallSite::in("C", 0));
  site::Site site = building.site;
  site::ExtensionUse use = *site.all<site::ExtensionUse>().begin();
  use.laying = laying;
  site.all<site::ExtensionUse>().put(use);
  return site;
}

Demonstration shown(const site::Site& site, Duration run, Duration step = 15.0 * second) {
  return demonstrate(site, kHookup, {run, step});
}

TEST(Demonstration, EndsWhereTheStudySaysThatTheMachineRuns) {
  for (const LoadClass loadClass : {LoadClass::Induction, LoadClass::RectifiedDc, LoadClass::Universal}) {
    const site::Site site = burnisherOn(12, 100, loadClass, 12);
    const Answer answer = assess(site);
    const HookupAnswer& hookup = *answer.find(kHookup);
    const Demonstration demonstration = shown(site, 2.0 * hour);
    const DemonstrationPoint& end = demonstration.points.back();
    EXPECT_NEAR(end.voltage.in(volt), hookup.voltage.likely.in(volt), 0.02);
    EXPECT_NEAR(end.current.in(ampere), hookup.current.likely.in(ampere), 0.01);
    EXPECT_NEAR(end.conductor->likely.celsius(), hookup.cords.front().conductor->likely.celsius(), 0.3);
    EXPECT_NEAR(end.surface->likely.celsius(), hookup.cords.front().surface->likely.celsius(), 0.3);
  }
}

TEST(Demonstration, SettlesAtTheSteadyHeatOfItsFinalCurrentWithItsBand) {
  const site::LayingOfCord coil{Laying::Coiled, 10.0, {}};
  const Demonstration demonstration = shown(burnisherOn(12, 50, LoadClass::Resistance, 9, coil), 24.0 * hour, minute);
  const DemonstrationPoint& end = demonstration.points.back();
  physics::CordSection section{units::WireSize::awg(12)};
  section.laying = Laying::Coiled;
  section.turns = 10.0;
  const auto band = physics::steadyBand(section, end.current, demonstration.air);
  ASSERT_TRUE(band.likely && band.low && band.high && end.conductor);
  EXPECT_NEAR(end.conductor->likely.celsius(), band.likely->conductor.celsius(), 0.2);
  EXPECT_NEAR(end.conductor->low.celsius(), band.low->conductor.celsius(), 0.2);
  EXPECT_NEAR(end.conductor->high.celsius(), band.high->conductor.celsius(), 0.4);
}

TEST(Demonstration, WarmsTheBreakerAsItsTripTimesSay) {
  SmallSite building;
  building.circuit("1", 20, 60)
      .machine("M", LoadClass::Resistance, 14)
      .plug("M", SmallSite::at("1"))
      .load("V", "1", 16);
  const Demonstration demonstration = shown(building.site, hour);
  const Answer answer = assess(building.site);
  const auto& trip = *answer.find(kHookup)->breaker.trip;
  ASSERT_TRUE(trip.likely && demonstration.trips[1]);
  // The current falls by some tenths while the cord warms.
  EXPECT_NEAR(demonstration.trips[1]->si() / trip.likely->si(), 1.0, 0.02);
  ASSERT_TRUE(demonstration.trips[0]);
  EXPECT_LT(*demonstration.trips[0], *demonstration.trips[1]);
}

TEST(Demonstration, CoolsOnceEvenTheLatestBreakerHasTripped) {
  SmallSite building;
  building.circuit("1", 15, 60)
      .machine("M", LoadClass::Resistance, 14)
      .plug("M", SmallSite::at("1"))
      .load("V", "1", 14);
  const Demonstration demonstration = shown(building.site, hour);
  ASSERT_TRUE(demonstration.trips[2]);
  const DemonstrationPoint after = demonstration.at(*demonstration.trips[2] + 5.0 * minute);
  EXPECT_FALSE(after.powered);
  EXPECT_EQ(after.current, 0.0 * ampere);
  EXPECT_LT(demonstration.points.back().conductor->likely, demonstration.at(*demonstration.trips[2]).conductor->likely);
}

TEST(Demonstration, SaysWhenTheLimitIsPassedBetweenItsEdges) {
  const site::LayingOfCord coil{Laying::Coiled, 10.0, {}};
  const Demonstration demonstration = shown(burnisherOn(14, 50, LoadClass::Induction, 14, coil), 2.0 * hour);
  const auto likely = demonstration.conductorOver(demonstration.limit);
  const auto early = demonstration.conductorOverEarly(demonstration.limit);
  const auto late = demonstration.conductorOverLate(demonstration.limit);
  ASSERT_TRUE(likely && early && late);
  EXPECT_LT(*early, *likely);
  EXPECT_LT(*likely, *late);
  EXPECT_NEAR(demonstration.at(*likely).conductor->likely.celsius(), demonstration.limit.celsius(), 0.1);
}

TEST(Demonstration, AHalfCoiledCordIsAsHotInItsCoil) {
  const site::LayingOfCord whole{Laying::Coiled, 10.0, {}};
  const site::LayingOfCord half{Laying::Coiled, 10.0, 25.0 * units::foot};
  const auto endOf = [](const site::LayingOfCord& laying) {
    return shown(burnisherOn(12, 50, LoadClass::Resistance, 10, laying), 2.0 * hour).points.back();
  };
  EXPECT_NEAR(endOf(half).conductor->likely.celsius(), endOf(whole).conductor->likely.celsius(), 1.0);
  EXPECT_LT(endOf(half).heat, endOf(whole).heat);
}

TEST(Demonstration, ALooseOutletHeatsThePlugAndNothingElse) {
  site::Site sound = burnisherOn(12, 50, LoadClass::Induction, 13);
  site::Site loose = sound;
  site::Outlet outlet = *loose.all<site::Outlet>().begin();
  for (site::Contact& contact : outlet.contacts) contact.loose = true;
  loose.all<site::Outlet>().put(outlet);
  const DemonstrationPoint a = shown(sound, hour).points.back();
  const DemonstrationPoint b = shown(loose, hour).points.back();
  EXPECT_GT((b.plug - a.plug).si(), 20.0);
  EXPECT_NEAR((b.conductor->likely - a.conductor->likely).si(), 0.0, 0.1);  // a few tenths of a volt less
}

TEST(Demonstration, StepsDoNotDecideTheResult) {
  const site::Site site = burnisherOn(16, 50, LoadClass::Induction, 14);
  const DemonstrationPoint coarse = shown(site, 30.0 * minute, 30.0 * second).points.back();
  const DemonstrationPoint fine = shown(site, 30.0 * minute, 3.0 * second).points.back();
  EXPECT_NEAR(coarse.conductor->likely.celsius(), fine.conductor->likely.celsius(), 0.1);
  EXPECT_NEAR(coarse.voltage.in(volt), fine.voltage.in(volt), 0.01);
}

}  // namespace
}  // namespace cordreach::study
