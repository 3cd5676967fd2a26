// SPDX-License-Identifier: GPL-3.0-or-later
// Whole answers of small buildings, against arithmetic that can be followed by hand.
#include "study/assess.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "support/small_site.h"

namespace cordreach::study {
namespace {

using tables::LoadClass;
using testing::SmallSite;
using units::ampere;
using units::minute;
using units::volt;

const HookupAnswer& hookup(const Answer& answer, const char* id) { return *answer.find(site::HookupId(id)); }
const CircuitAnswer& circuit(const Answer& answer, const char* id) { return *answer.find(site::CircuitId(id)); }

TEST(Assess, AddsTheDropsOfSourceWallAndCord) {
  const auto building =
      SmallSite().circuit("1", 20, 60).machine("M", LoadClass::Resistance, 12).plug("M", SmallSite::at("1"));
  const Answer answer = assess(building.site);
  // 12 AWG stranded 5.31 ohm/km at 20 °C over 2 × 18.3 m and 14 AWG 8.45 over 2 × 15.2 m, some kelvin warmer, plus
  // 0.06.
  const double loopOhm = 0.06 + 2 * 18.288 * 5.31e-3 * 1.05 + 2 * 15.24 * 8.45e-3 * 1.05;
  EXPECT_NEAR(hookup(answer, "HM").voltage.likely.in(volt), 120.0 / (1.0 + loopOhm / 10.0), 0.25);
  EXPECT_NEAR(hookup(answer, "HM").current.likely.in(ampere), hookup(answer, "HM").voltage.likely.in(volt) / 10.0,
              1e-3);
  EXPECT_NEAR(hookup(answer, "HM").drop.likely.in(volt), 120.0 - hookup(answer, "HM").voltage.likely.in(volt), 1e-9);
}

TEST(Assess, KeepsTheLikelyValueInsideItsBand) {
  auto building = SmallSite().circuit("1", 20, 60).machine("M", LoadClass::Induction, 12).plug("M", SmallSite::at("1"));
  site::Run run = building.site.at<site::Run>(site::RunId("1"));
  run.length =
      site::Stated<units::Length>{20.0 * units::metre, 10.0 * units::metre, 40.0 * units::metre, {}, {}, {}, {}};
  building.site.all<site::Run>().put(run);
  const auto voltage = hookup(assess(building.site), "HM").voltage;
  EXPECT_LT(voltage.low, voltage.likely);
  EXPECT_LT(voltage.likely, voltage.high);
}

TEST(Assess, SumsWhatGoesThroughASharedExtension) {
  const auto building = SmallSite()
                            .circuit("1", 20, 60)
                            .machine("M", LoadClass::Resistance, 8)
                            .machine("N", LoadClass::Resistance, 5)
                            .cord("C", 12, 25, 2)
                            .extension("C", "1")
                            .plug("M", SmallSite::in("C", 0))
                            .plug("N", SmallSite::in("C", 1));
  const Answer answer = assess(building.site);
  const CordAnswer& extension = hookup(answer, "HM").cords.front();
  EXPECT_FALSE(extension.own());
  EXPECT_NEAR(extension.plateSum.in(ampere), 13.0, 1e-12);
  EXPECT_NEAR(extension.current.likely.in(ampere),
              (hookup(answer, "HM").current.likely + hookup(answer, "HN").current.likely).in(ampere), 1e-6);
  EXPECT_TRUE(hookup(answer, "HM").cords.back().own());
}

TEST(Assess, ReportsACircuitAtItsWorstHour) {
  const auto building = SmallSite()
                            .circuit("1", 20, 30)
                            .machine("M", LoadClass::Resistance, 10)
                            .machine("N", LoadClass::Resistance, 9)
                            .plug("M", SmallSite::at("1"), {{18.0, 20.0}})
                            .plug("N", SmallSite::at("1", "lower"), {{19.0, 21.0}});
  const Answer answer = assess(building.site);
  ASSERT_TRUE(circuit(answer, "1").moment.has_value());
  EXPECT_EQ(circuit(answer, "1").moment->in(units::hour), 19.0);
  EXPECT_EQ(circuit(answer, "1").shares.size(), 2u);
  EXPECT_EQ(circuit(answer, "1").breaker.run.in(units::hour), 1.0);
  EXPECT_NEAR(circuit(answer, "1").breaker.carrying.in(ampere), 9.7, 0.4);
}

TEST(Assess, StartsTheBreakerFromWhatRunsBesideACyclingLoad) {
  const auto building = SmallSite()
                            .circuit("1", 20, 30)
                            .load("cooler", "1", 9, site::Cycle{7.0 * minute, 13.0 * minute})
                            .machine("M", LoadClass::Resistance, 14)
                            .plug("M", SmallSite::at("1"));
  const BreakerAnswer breaker = circuit(assess(building.site), "1").breaker;
  EXPECT_NEAR(breaker.carrying.in(ampere), 13.2, 0.6);
  EXPECT_GT(breaker.current.in(ampere), 21.0);
  EXPECT_EQ(breaker.run.in(minute), 7.0);
}

TEST(Assess, LeavesMostlyIdleLoadsOutOfTheLikelyCurrent) {
  const auto building =
      SmallSite().circuit("1", 20, 30).load("cooler", "1", 9, site::Cycle{7.0 * minute, 13.0 * minute});
  const CircuitAnswer answer = circuit(assess(building.site), "1");
  EXPECT_NEAR(answer.current.likely.in(ampere), 9.0, 0.2);
  EXPECT_NEAR(answer.likelyCurrent.in(ampere), 0.0, 0.1);
}

TEST(Assess, CancelsASharedNeutralOnSplitPhase) {
  auto building = SmallSite()
                      .circuit("1", 20, 60, 0)
                      .circuit("2", 20, 60, 1)
                      .machine("M", LoadClass::Resistance, 10)
                      .machine("N", LoadClass::Resistance, 10)
                      .plug("M", SmallSite::at("1"))
                      .plug("N", SmallSite::at("2"));
  const double apartV = hookup(assess(building.site), "HM").voltage.likely.in(volt);
  site::Circuit first = building.site.at<site::Circuit>(site::CircuitId("1"));
  first.sharesNeutralWith = {site::CircuitId("2")};
  building.site.all<site::Circuit>().put(first);
  // Both legs on one run: the outlet of the second circuit hangs on the first one's wire.
  const Answer shared = assess(building.site);
  EXPECT_GT(hookup(shared, "HM").voltage.likely.in(volt), apartV - 1e-6);
  EXPECT_LT(circuit(shared, "1").neutral.in(ampere), 0.2);
}

TEST(Assess, ShowsWhatALostNeutralDoes) {
  auto building = SmallSite()
                      .circuit("1", 20, 60, 0)
                      .circuit("2", 20, 60, 1)
                      .machine("M", LoadClass::Resistance, 12)
                      .machine("N", LoadClass::Resistance, 4)
                      .plug("M", SmallSite::at("1"))
                      .plug("N", SmallSite::at("2"));
  site::Circuit first = building.site.at<site::Circuit>(site::CircuitId("1"));
  first.sharesNeutralWith = {site::CircuitId("2")};
  building.site.all<site::Circuit>().put(first);
  const Answer answer =
      assess(building.site, {.panels = {}, .likelyOnly = false, .lostNeutral = {site::CircuitId("1")}, .progress = {}});
  // 10 and 30 ohm in series on 240 V share it one to three, less what the wires take.
  const double heavyV = hookup(answer, "HM").voltage.likely.in(volt);
  const double lightV = hookup(answer, "HN").voltage.likely.in(volt);
  EXPECT_NEAR(lightV / heavyV, 3.0, 1e-6);
  EXPECT_NEAR(lightV + heavyV, 235.0, 4.0);
}

TEST(Assess, JudgesAnUntracedOutletAloneOnTheStrictestCommonBreaker) {
  auto building =
      SmallSite().circuit("1", 20, 60).machine("M", LoadClass::Resistance, 23).plug("M", SmallSite::at("1"));
  site::Outlet outlet = building.site.at<site::Outlet>(site::OutletId("1"));
  for (auto& contact : outlet.contacts) contact.assignment.reset();
  building.site.all<site::Outlet>().put(outlet);
  const HookupAnswer answer = hookup(assess(building.site), "HM");
  EXPECT_FALSE(answer.circuit.has_value());
  EXPECT_FALSE(answer.breaker.rating.has_value());
  ASSERT_TRUE(answer.breaker.trip.has_value());
  EXPECT_TRUE(answer.breaker.trip->likely.has_value());
}

TEST(Assess, TakesAContactToTheNeutralWhenItUsesOnePoleOfTwo) {
  auto building =
      SmallSite().circuit("1", 20, 60).machine("M", LoadClass::Resistance, 12).plug("M", SmallSite::at("1"));
  site::Circuit circuit = building.site.at<site::Circuit>(site::CircuitId("1"));
  circuit.phases = {0, 1};
  building.site.all<site::Circuit>().put(circuit);
  EXPECT_EQ(hookup(assess(building.site), "HM").nominal.in(volt), 240.0);
  site::Outlet outlet = building.site.at<site::Outlet>(site::OutletId("1"));
  outlet.contacts.front().poles = {1};
  building.site.all<site::Outlet>().put(outlet);
  EXPECT_EQ(hookup(assess(building.site), "HM").nominal.in(volt), 120.0);
}

TEST(Assess, GivesNoPowerToADeadContact) {
  auto building =
      SmallSite().circuit("1", 20, 60).machine("M", LoadClass::Resistance, 12).plug("M", SmallSite::at("1"));
  site::Outlet outlet = building.site.at<site::Outlet>(site::OutletId("1"));
  outlet.contacts.front().dead = true;
  building.site.all<site::Outlet>().put(outlet);
  EXPECT_EQ(hookup(assess(building.site), "HM").current.likely.in(ampere), 0.0);
}

TEST(Assess, AnswersAMachineWhoseCordEndsNowhere) {
  const auto building = SmallSite()
                            .circuit("1", 20, 60)
                            .machine("M", LoadClass::Resistance, 12)
                            .cord("C", 12, 25)
                            .plug("M", SmallSite::in("C"));
  const Answer answer = assess(building.site);
  ASSERT_EQ(answer.hookups.size(), 1u);
  EXPECT_FALSE(answer.hookups.front().outlet.has_value());
}

TEST(Assess, HeatsTheCoiledPartMost) {
  site::LayingOfCord coil{tables::Laying::Coiled, 12.0, 10.0 * units::foot};
  const auto building = SmallSite()
                            .circuit("1", 20, 60)
                            .machine("M", LoadClass::Resistance, 12)
                            .cord("C", 16, 50)
                            .extension("C", "1", coil)
                            .plug("M", SmallSite::in("C"));
  const auto cords = hookup(assess(building.site), "HM").cords;
  EXPECT_GT(cords.front().conductor->likely.celsius(), 80.0);
  ASSERT_TRUE(cords.front().timeToLimit.has_value());
  EXPECT_LT(cords.front().timeToLimit->in(minute), 20.0);
  EXPECT_FALSE(cords.back().timeToLimit.has_value());
}

TEST(Assess, GivesTheSameAnswerForEveryOrderOfMaking) {
  const auto one = SmallSite()
                       .circuit("1", 20, 60)
                       .circuit("2", 20, 40, 1)
                       .machine("M", LoadClass::Induction, 12)
                       .plug("M", SmallSite::at("1"));
  const auto other = SmallSite()
                         .machine("M", LoadClass::Induction, 12)
                         .circuit("2", 20, 40, 1)
                         .circuit("1", 20, 60)
                         .plug("M", SmallSite::at("1"));
  EXPECT_EQ(hookup(assess(one.site), "HM").voltage, hookup(assess(other.site), "HM").voltage);
}

TEST(Assess, StudiesOnlyThePanelsAskedFor) {
  auto building = SmallSite().circuit("1", 20, 60);
  site::Panel second{site::PanelId("Q"), "Q", site::SupplyId("S"), {}, {}, {}, {}, {}, {}, {}, {}, {}, {}};
  building.site.all<site::Panel>().put(second);
  const Answer answer = assess(
      building.site, {.panels = std::set{site::PanelId("Q")}, .likelyOnly = false, .lostNeutral = {}, .progress = {}});
  EXPECT_TRUE(answer.circuits.empty());
}

}  // namespace
}  // namespace cordreach::study
