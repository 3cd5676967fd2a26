// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "tiny_site.h"

namespace cordreach::rules {
namespace {

void tripping(TinySite& tiny, std::optional<double> earliest, std::optional<double> likely) {
  physics::TripTimes times;
  if (earliest) times.earliest = *earliest * second;
  if (likely) times.likely = *likely * second;
  tiny.circuitGiven().breaker.trip = times;
  tiny.circuitGiven().breaker.run = 600.0 * second;
  tiny.given().breaker = tiny.circuitGiven().breaker;
}

TEST(BreakerTrips, StartsWhenTheLikelyCurveActsWithinTheRun) {
  TinySite tiny;
  tripping(tiny, 60.0, 601.0);
  EXPECT_FALSE(tiny.has("breaker.trips"));
  tripping(tiny, 60.0, 600.0);
  ASSERT_EQ(tiny.found("breaker.trips").size(), 1u);
  EXPECT_FALSE(tiny.has("breaker.trips_early"));
  EXPECT_EQ(tiny.found("breaker.trips")[0].subjects.front(), (Subject{SubjectKind::Circuit, "c1"}));
}

TEST(BreakerTrips, NamesWhoSharesTheCircuitLargestFirst) {
  TinySite tiny;
  tripping(tiny, 20.0, 150.0);
  tiny.addLoad("v2", "Snack vending", 2.0);
  tiny.addLoad("v1", "Cold vending", 8.0);
  const Finding finding = tiny.found("breaker.trips").at(0);
  ASSERT_EQ(finding.why.size(), 4u);
  EXPECT_EQ(finding.why[0].code, "share.machine");
  EXPECT_DOUBLE_EQ(finding.why[0].share.value(), 15.0 / 25.0);
  EXPECT_DOUBLE_EQ(finding.why[1].share.value(), 8.0 / 25.0);
  EXPECT_EQ(finding.why[3].code, "breaker.rated");
}

TEST(BreakerTripsEarly, IsANoticeWhenOnlyTheEarliestCurveActs) {
  TinySite tiny;
  tripping(tiny, 601.0, {});
  EXPECT_FALSE(tiny.has("breaker.trips_early"));
  tripping(tiny, 600.0, {});
  ASSERT_TRUE(tiny.has("breaker.trips_early"));
  EXPECT_EQ(tiny.verdict(), Severity::Notice);
}

TEST(BreakerTrips, CanBeAcceptedAndThenColoursNothing) {
  TinySite tiny;
  tripping(tiny, 20.0, 150.0);
  EXPECT_EQ(tiny.verdict(), Severity::Caution);
  tiny.put(site::Acceptance{.id = site::AcceptanceId("a1"), .finding = "breaker.trips", .subject = "c1", .who = "Lee"});
  ASSERT_TRUE(tiny.has("breaker.trips"));
  EXPECT_TRUE(tiny.found("breaker.trips")[0].accepted);
  EXPECT_EQ(tiny.verdict(), Severity::Ok);
  EXPECT_EQ(worstOf(tiny.judged()), Severity::Ok);
}

void untraced(TinySite& tiny, double plate) {
  site::Outlet outlet = tiny.outlet();
  for (site::Contact& contact : outlet.contacts) contact.assignment.reset();
  tiny.put(outlet);
  tiny.answer.circuits.clear();
  tiny.given().circuit.reset();
  tiny.given().breaker.rating.reset();
  tiny.given().socketPlateSum = plate * ampere;
}

TEST(BreakerUnknown, StartsJustAboveTwelveAmps) {
  TinySite tiny;
  untraced(tiny, 12.0);
  EXPECT_FALSE(tiny.has("breaker.unknown"));
  EXPECT_TRUE(tiny.has("unknown.matters"));
  untraced(tiny, 12.1);
  EXPECT_TRUE(tiny.has("breaker.unknown"));
}

double clockOf(const Finding& finding) {
  for (const base::Argument& argument : finding.arguments) {
    if (argument.name == "clock_s") return std::get<double>(argument.value);
  }
  return -1.0;
}

TEST(BreakerTrips, SaysAtWhatTimeWhereTheDayDoes) {
  TinySite tiny;
  tripping(tiny, 20.0, 150.0);
  EXPECT_EQ(clockOf(tiny.found("breaker.trips").at(0)), -1.0);
  tiny.circuitGiven().breaker.tripsAt = 18.5 * hour;
  const Finding finding = tiny.found("breaker.trips").at(0);
  EXPECT_EQ(clockOf(finding), 18.5 * 3600.0);
  EXPECT_EQ(finding.moment, 18.5 * hour);
}

TEST(BreakerTrips, IsToldOfAPanelsMain) {
  TinySite tiny;
  study::MainAnswer main{site::PanelId("p1"), tiny.circuitGiven().breaker, {site::HookupId("h1")}};
  main.breaker.trip = physics::TripTimes{20.0 * second, 150.0 * second, {}};
  main.breaker.run = 150.0 * second;
  main.breaker.rating = 60.0 * ampere;
  tiny.answer.mains = {main};
  ASSERT_EQ(tiny.found("breaker.trips").size(), 1u);
  EXPECT_EQ(tiny.found("breaker.trips")[0].subjects.front(), (Subject{SubjectKind::Panel, "p1"}));
  EXPECT_EQ(tiny.verdict(), Severity::Caution);
  tiny.answer.mains[0].breaker.trip->likely.reset();
  EXPECT_FALSE(tiny.has("breaker.trips"));
  EXPECT_TRUE(tiny.has("breaker.trips_early"));
}

}  // namespace
}  // namespace cordreach::rules
