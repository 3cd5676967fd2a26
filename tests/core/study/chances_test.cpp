// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/chances.h"

#include <gmock/gmock.h>

#include <cmath>

#include "physics/breaker_curve.h"
#include "study/assess.h"
#include "study/chance_sample.h"
#include "support/small_site.h"

namespace cordreach::study {
namespace {

using tables::LoadClass;
using testing::SmallSite;
using units::ampere;
using units::minute;

const site::CircuitId kCircuit("1");

Chance chance(const SmallSite& building, ChanceOptions options = {.samples = 4000}) {
  return chanceOf(building.site, kCircuit, options).value();
}

site::Known<units::Current> guess(double lowA, double likelyA, double highA) {
  return site::Stated<units::Current>{likelyA * ampere, lowA * ampere, highA * ampere, {}, {}, {}, {}};
}

// One load whose amps are known for sure, so that only the breaker is uncertain.
SmallSite onlyBreakerUncertain(double amps) {
  SmallSite building;
  building.circuit("1", 20, 10).load("L", "1", amps);
  building.site.ambient.panel = site::known(units::Temperature::fromCelsius(25.0));
  auto load = building.site.at<site::FixedLoad>(site::FixedLoadId("L"));
  load.running = guess(amps, amps, amps);
  building.site.all<site::FixedLoad>().put(load);
  return building;
}

TEST(Chances, OfASmallLoadAreNil) {
  const Chance answer = chance(SmallSite().circuit("1", 20, 30).load("L", "1", 5));
  EXPECT_EQ(answer.trips, 0.0);
  EXPECT_EQ(answer.standardError, 0.0);
  EXPECT_EQ(answer.samples, 4000u);
}

TEST(Chances, OfTwiceTheRatingAreCertain) {
  EXPECT_EQ(chance(SmallSite().circuit("1", 15, 10).load("L", "1", 40)).trips, 1.0);
}

// Held for long, a breaker trips when its ultimate current is below the load's; with the triangle's law turned round
// the probability is known in closed form.
TEST(Chances, AgreeWithTheClosedFormWhenOnlyTheBreakerIsUncertain) {
  const physics::Breaker breaker{20.0 * ampere};
  const auto ultimateA = [&](physics::TripCurve curve) {
    return physics::thermalCurve(breaker, curve, units::Temperature::fromCelsius(25.0)).ultimate.in(ampere);
  };
  for (const double amps : {22.5, 24.0, 25.5, 27.0}) {
    const SmallSite building = onlyBreakerUncertain(amps);
    const double drawnA = assess(building.site).find(kCircuit)->current.likely.in(ampere);
    const double likelyA = ultimateA(physics::TripCurve::Likely);
    const bool above = drawnA > likelyA;
    const double endA = ultimateA(above ? physics::TripCurve::Latest : physics::TripCurve::Earliest);
    const double w = std::min(1.0, std::log(drawnA / likelyA) / std::log(endA / likelyA));
    const double half = 0.5 * (2.0 * w - w * w);
    const double expected = above ? 0.5 + half : 0.5 - half;
    const Chance answer = chance(building, {.samples = 20000});
    EXPECT_NEAR(answer.trips, expected, 4.0 * std::sqrt(expected * (1.0 - expected) / 20000.0) + 0.003) << amps;
  }
}

TEST(Chances, AreTheSameOnAnyNumberOfThreads) {
  SmallSite building = onlyBreakerUncertain(24.0);
  const Chance one = chance(building, {.samples = 999, .seed = 7, .threads = 1});
  for (const std::size_t threads : {2u, 3u}) {
    const Chance many = chance(building, {.samples = 999, .seed = 7, .threads = threads});
    EXPECT_EQ(many.trips, one.trips);
    EXPECT_EQ(many.influences.front().share, one.influences.front().share);
  }
}

TEST(Chances, FallWithALargerBreaker) {
  const auto trips = [](double ratingA) {
    return chance(SmallSite()
                      .circuit("1", ratingA, 30)
                      .machine("M", LoadClass::Resistance, 18)
                      .plug("M", SmallSite::at("1")))
        .trips;
  };
  EXPECT_GT(trips(15), trips(20));
  EXPECT_GE(trips(20), trips(30));
}

TEST(Chances, NameTheUnknownThatMattersMost) {
  SmallSite building;
  building.circuit("1", 20, 30).load("L", "1", 20).load("S", "1", 2);
  auto load = building.site.at<site::FixedLoad>(site::FixedLoadId("L"));
  load.running = guess(8, 20, 32);
  building.site.all<site::FixedLoad>().put(load);
  const Chance answer = chance(building);
  ASSERT_NE(answer.worthMeasuring(), nullptr);
  EXPECT_EQ(answer.worthMeasuring()->kind, UnknownKind::LoadAmps);
  EXPECT_EQ(answer.worthMeasuring()->id, "L");
  EXPECT_GT(answer.worthMeasuring()->share, 0.3);
}

TEST(Chances, FindNothingWorthMeasuringWhereOnlyTheBreakerIsUncertain) {
  const Chance answer = chance(onlyBreakerUncertain(24.0));
  EXPECT_EQ(answer.worthMeasuring(), nullptr);
  EXPECT_EQ(answer.influences.front().kind, UnknownKind::Breaker);
  EXPECT_GT(answer.influences.front().share, 0.5);
}

TEST(Chances, WaitForACoolerThatMayNotComeOnInTime) {
  const auto building = [](units::Duration off) {
    return SmallSite()
        .circuit("1", 20, 30)
        .load("cooler", "1", 14, site::Cycle{10.0 * minute, off})
        .machine("M", LoadClass::Resistance, 14)
        .plug("M", SmallSite::at("1"), {{18.0, 18.25}});
  };
  const double often = chance(building(10.0 * minute)).trips;
  const double seldom = chance(building(110.0 * minute)).trips;
  EXPECT_GT(often, 0.7);
  EXPECT_GT(seldom, 0.05);
  EXPECT_LT(seldom, 0.4);
}

TEST(Chances, TellHowOftenACordEndsOverItsRating) {
  const auto over = [](site::LayingOfCord laying) {
    const Chance answer = chance(SmallSite()
                                     .circuit("1", 20, 30)
                                     .machine("M", LoadClass::Resistance, 13)
                                     .cord("C", 16, 50)
                                     .extension("C", "1", laying)
                                     .plug("M", SmallSite::in("C"), {{18.0, 20.0}}));
    const auto cord = std::find_if(answer.cords.begin(), answer.cords.end(),
                                   [](const CordChance& one) { return one.extension.has_value(); });
    return cord->overRating;
  };
  EXPECT_LT(over({}), 0.05);
  EXPECT_GT(over({tables::Laying::Coiled, 12.0, {}}), 0.95);
}

TEST(Chances, OfAnUnknownBreakerAreUnknown) {
  SmallSite building;
  building.circuit("1", 20, 30).load("L", "1", 5);
  auto circuit = building.site.at<site::Circuit>(kCircuit);
  circuit.rating.reset();
  building.site.all<site::Circuit>().put(circuit);
  EXPECT_FALSE(chanceOf(building.site, kCircuit));
}

TEST(Chances, StopWhenAsked) {
  std::atomic<bool> stop = true;
  EXPECT_FALSE(chanceOf(onlyBreakerUncertain(24.0).site, kCircuit, {.progress = {.stop = &stop}}));
}

TEST(Draws, HaveTheTrianglesShape) {
  double sum = 0.0;
  double squares = 0.0;
  constexpr int kDraws = 100000;
  for (int i = 0; i < kDraws; ++i) {
    const double w = triangleOf(uniformOf(1, static_cast<std::uint64_t>(i), 3));
    ASSERT_GE(w, -1.0);
    ASSERT_LE(w, 1.0);
    sum += w;
    squares += w * w;
  }
  EXPECT_NEAR(sum / kDraws, 0.0, 0.01);
  EXPECT_NEAR(squares / kDraws, 1.0 / 6.0, 0.005);  // variance of the triangle on -1 to 1, closed form
}

}  // namespace
}  // namespace cordreach::study
