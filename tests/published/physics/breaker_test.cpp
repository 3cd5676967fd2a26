// SPDX-License-Identifier: GPL-3.0-or-later
// Breakers: calibration points of the standards, the closed form, and the table of trip times computed from both.
#include <array>
#include <cmath>
#include <optional>

#include <gtest/gtest.h>

#include "physics/breaker_trip.h"
#include "physics/ground_fault.h"

namespace cordreach::physics {
namespace {

using units::ampere;

units::Temperature celsius(double value) { return units::Temperature::fromCelsius(value); }

std::optional<units::Duration> at(const Breaker& breaker, TripCurve curve, double multiple, double airC,
                                  double carryingMultiple = 0.0) {
  return tripTime(breaker, curve, multiple * breaker.rating, carryingMultiple * breaker.rating, celsius(airC));
}

const Breaker kTwenty{20.0 * ampere};

// UL 489: no trip at 100 % in 40 °C air (seen).
TEST(Ul489, RatedCurrentIsHeldByEveryCurveInFortyDegrees) {
  for (const double ratingA : {15.0, 20.0, 30.0, 50.0, 100.0}) {
    for (const TripCurve curve : kTripCurves) {
      EXPECT_FALSE(at({ratingA * ampere}, curve, 1.0, 40).has_value()) << ratingA;
    }
  }
}

// UL 489 at 25 °C: 135 % within 60 min to 50 A (seen), 120 min above (from memory). The latest curve uses all of it.
TEST(Ul489, LatestCurveTripsAtOneHundredThirtyFivePerCentAfterTheWholeTime) {
  EXPECT_NEAR(at(kTwenty, TripCurve::Latest, 1.35, 25)->si(), 3600.0, 1.0);
  EXPECT_NEAR(at({40.0 * ampere}, TripCurve::Latest, 1.35, 25)->si(), 3600.0, 1.0);
  EXPECT_NEAR(at({70.0 * ampere}, TripCurve::Latest, 1.35, 25)->si(), 7200.0, 3.0);
}

// UL 489 at 25 °C: 200 % within 2 min to 30 A, 4 min to 50 A, 6 min to 100 A (seen, a forensic article's table).
TEST(Ul489, LatestCurveTripsAtTwiceTheRatingAtTheLimit) {
  for (const auto& [ratingA, seconds] : {std::pair{15.0, 120.0}, {30.0, 120.0}, {50.0, 240.0}, {100.0, 360.0}}) {
    EXPECT_NEAR(at({ratingA * ampere}, TripCurve::Latest, 2.0, 25)->si(), seconds, 0.05) << ratingA;
  }
}

// NEMA AB 4 field test at 300 % (method seen, limits from memory): 50 s to 30 A, 140 s to 100 A. Documented miss: 80 s
// for 31 to 50 A, where the curve through UL 489's points takes 89 s.
TEST(NemaAb4, FieldTestIsMetExceptByTheMiddleRatings) {
  EXPECT_NEAR(at(kTwenty, TripCurve::Latest, 3.0, 25)->si(), 44.7, 0.1);
  EXPECT_LE(at(kTwenty, TripCurve::Latest, 3.0, 25)->si(), 50.0);
  EXPECT_LE(at({100.0 * ampere}, TripCurve::Latest, 3.0, 25)->si(), 140.0);
  EXPECT_NEAR(at({50.0 * ampere}, TripCurve::Latest, 3.0, 25)->si(), 89.0, 1.0);
}

// IEC 60898-1 at 30 °C (seen, a maker quoting clauses): 1.13 I_n holds for an hour, 1.45 I_n trips within one.
TEST(Iec60898, ConventionalCurrentsAreHeldAndTripped) {
  const Breaker b16{16.0 * ampere, BreakerKind::IecB};
  for (const TripCurve curve : kTripCurves) EXPECT_FALSE(at(b16, curve, 1.1299, 30).has_value());
  EXPECT_NEAR(at(b16, TripCurve::Latest, 1.45, 30)->si(), 3600.0, 1.0);
  EXPECT_LT(at(b16, TripCurve::Likely, 1.45, 30)->si(), 3600.0);
}

// IEC 60898-1 (from memory): at 2.55 I_n between 1 and 60 s to 32 A, between 1 and 120 s above.
TEST(Iec60898, SecondPointLiesWithinItsWindow) {
  const Breaker c32{32.0 * ampere, BreakerKind::IecC};
  EXPECT_NEAR(at(c32, TripCurve::Latest, 2.55, 30)->si(), 60.0, 0.05);
  EXPECT_NEAR(at(c32, TripCurve::Earliest, 2.55, 30)->si(), 1.0, 0.02);
  const Breaker c63{63.0 * ampere, BreakerKind::IecC};
  EXPECT_NEAR(at(c63, TripCurve::Latest, 2.55, 30)->si(), 120.0, 0.05);
  EXPECT_GE(at(c63, TripCurve::Earliest, 2.55, 30)->si(), 1.0);
}

// IEC 60898-1 (from memory): instantaneous B 3 to 5, C 5 to 10, D 10 to 20 I_n, below 0.1 s at the upper end.
TEST(Iec60898, InstantaneousBandsBelongToTheirLetters) {
  const std::array<std::tuple<BreakerKind, double, double>, 3> bands = {
      {{BreakerKind::IecB, 3, 5}, {BreakerKind::IecC, 5, 10}, {BreakerKind::IecD, 10, 20}}};
  for (const auto& [kind, low, high] : bands) {
    const Breaker breaker{16.0 * ampere, kind};
    EXPECT_NEAR(instantaneousTrip(breaker, TripCurve::Earliest)->pickUp / breaker.rating, low, 1e-9);
    EXPECT_NEAR(instantaneousTrip(breaker, TripCurve::Latest)->pickUp / breaker.rating, high, 1e-9);
    EXPECT_LE(at(breaker, TripCurve::Latest, high, 30)->si(), 0.1);
    EXPECT_GT(at(breaker, TripCurve::Latest, 0.99 * high, 30)->si(), 0.1);
  }
}

// IEC 60255-149 (seen, relay manuals): t = tau ln[(I^2 - I_p^2)/(I^2 - I_th^2)]; at twice I_th cold 0.2877 tau, from
// 0.9 I_th 0.0614 tau.
TEST(ThermalReplica, FollowsTheRelayStandardsClosedForm) {
  const ThermalCurve curve = thermalCurve(kTwenty, TripCurve::Likely, celsius(25));
  const auto cold = tripTime(kTwenty, TripCurve::Likely, 2.0 * curve.ultimate, 0.0 * ampere, celsius(25));
  const auto hot = tripTime(kTwenty, TripCurve::Likely, 2.0 * curve.ultimate, 0.9 * curve.ultimate, celsius(25));
  EXPECT_NEAR(*cold / curve.timeConstant, 0.2877, 5e-5);
  EXPECT_NEAR(*hot / curve.timeConstant, 0.0614, 5e-5);
}

struct Times {
  double multiple;
  std::optional<double> likelyS, latestS;
};

// Computed from UL 489's points and our likely curve, cold, 25 °C; a hundred amperes and more are instantaneous.
TEST(TripTimes, AreTheComputedTablesCold) {
  const Times rows[] = {{1.1, std::nullopt, std::nullopt},
                        {1.2, 341, std::nullopt},
                        {1.5, 97, 328},
                        {2, 43, 120},
                        {3, 16.8, 44.7},
                        {4, 9.1, 23.9},
                        {5, 5.7, 14.9},
                        {6, 3.9, 10.3},
                        {8, 2.2, 5.7}};
  for (const Times& row : rows) {
    const auto likely = at(kTwenty, TripCurve::Likely, row.multiple, 25);
    const auto latest = at(kTwenty, TripCurve::Latest, row.multiple, 25);
    ASSERT_EQ(likely.has_value(), row.likelyS.has_value()) << row.multiple;
    ASSERT_EQ(latest.has_value(), row.latestS.has_value()) << row.multiple;
    if (likely) {
      EXPECT_NEAR(likely->si(), *row.likelyS, 0.02 * *row.likelyS) << row.multiple;
    }
    if (latest) {
      EXPECT_NEAR(latest->si(), *row.latestS, 0.02 * *row.latestS) << row.multiple;
    }
  }
}

// The same, having carried 80 % of the rating.
TEST(TripTimes, AreTheComputedTablesHot) {
  const Times rows[] = {{1.2, 282, std::nullopt}, {1.5, 63, 262}, {2, 25, 86}, {3, 9.4, 30}, {5, 3.1, 9.8}};
  for (const Times& row : rows) {
    const auto likely = at(kTwenty, TripCurve::Likely, row.multiple, 25, 0.8);
    EXPECT_NEAR(likely->si(), *row.likelyS, 0.02 * *row.likelyS) << row.multiple;
    const auto latest = at(kTwenty, TripCurve::Latest, row.multiple, 25, 0.8);
    ASSERT_EQ(latest.has_value(), row.latestS.has_value()) << row.multiple;
    if (latest) {
      EXPECT_NEAR(latest->si(), *row.latestS, 0.02 * *row.latestS) << row.multiple;
    }
  }
}

// The table's earliest row took 1.05 I_n at 25 °C where this program has 1.02 at 40 °C, that is 1.05 in 35 °C air.
TEST(TripTimes, OfTheEarliestCurveAreTheComputedTablesInThirtyFiveDegrees) {
  for (const auto& [multiple, seconds] :
       {std::pair{1.2, 52.0}, {1.35, 33.0}, {1.5, 24.0}, {2.0, 11.6}, {3.0, 4.7}, {4.0, 2.6}}) {
    EXPECT_NEAR(at(kTwenty, TripCurve::Earliest, multiple, 35)->si(), seconds, 0.03 * seconds) << multiple;
  }
}

// Uncompensated bimetals of 90, 110 and 130 °C (law from memory, figures computed), relative to 40 °C:
// 25 °C 1.14 1.10 1.08, 50 °C 0.89 0.93 0.94, 60 °C 0.78 0.85 0.88. Each curve takes the one that honesty demands.
TEST(Ambient, MovesTheCurvesByTheBimetalLaw) {
  const auto ratio = [](TripCurve curve, double airC) {
    return thermalCurve(kTwenty, curve, celsius(airC)).ultimate / thermalCurve(kTwenty, curve, celsius(40)).ultimate;
  };
  EXPECT_NEAR(ratio(TripCurve::Earliest, 25), 1.08, 0.005);
  EXPECT_NEAR(ratio(TripCurve::Earliest, 50), 0.89, 0.005);
  EXPECT_NEAR(ratio(TripCurve::Earliest, 60), 0.78, 0.006);
  EXPECT_NEAR(ratio(TripCurve::Likely, 25), 1.10, 0.005);
  EXPECT_NEAR(ratio(TripCurve::Likely, 50), 0.93, 0.005);
  EXPECT_NEAR(ratio(TripCurve::Likely, 60), 0.85, 0.005);
  EXPECT_NEAR(ratio(TripCurve::Latest, 50), 0.94, 0.005);
  EXPECT_NEAR(ratio(TripCurve::Latest, 60), 0.88, 0.005);
}

// UL 943 class A (seen in three texts): 5.59 s at 6 mA, 0.025 s at 264 mA.
TEST(GroundFaultDevice, TripsOnThePublishedCurve) {
  EXPECT_NEAR(groundFaultTripTime(6.0 * units::milliampere)->si(), 5.59, 0.01);
  EXPECT_NEAR(groundFaultTripTime(264.0 * units::milliampere)->si(), 0.025, 0.0001);
}

// Cord leakage at 120 V, 60 Hz: 0.20 mA on 30 m at 150 pF/m (computed; the capacitance from memory).
TEST(CordLeakage, IsTheComputedOneOfThirtyMetres) {
  const auto leak = cordLeakage(30.0 * units::metre, 120.0 * units::volt, 60.0 * units::hertz);
  EXPECT_NEAR(leak.in(units::milliampere), 0.20, 0.005);
}

}  // namespace
}  // namespace cordreach::physics
