// SPDX-License-Identifier: GPL-3.0-or-later
// Days small enough to be followed by hand.
#include "timeline/day.h"

#include <gtest/gtest.h>

#include <atomic>
#include <cmath>

#include "support/day_builder.h"
#include "timeline/settle.h"

namespace cordreach::timeline {
namespace {

using testing::DayBuilder;
using testing::DayCordLike;
using testing::firstS;
using testing::fixedCurrent;
using testing::impedanceOhm;
using units::ampere;
using units::second;

constexpr physics::Breaker kTwenty{20.0 * ampere};

const physics::BreakerAir& calibrationAir() {
  static const auto air = physics::BreakerAir::all(physics::defaultBreakerAir());
  return air;
}

// The cord of a day, as warm as it gets.
class RestedCord : public BranchHeat {
 public:
  explicit RestedCord(DayCordLike cord) : m_cord(cord), m_ladder(testing::ladderOf(cord)) {}
  network::Branch warm(double poleRmsA, double) const override {
    return testing::branchOf(m_cord, physics::steadyOf(m_ladder, poleRmsA * ampere, testing::kDayAir)->conductor);
  }

 private:
  DayCordLike m_cord;
  physics::CordLadder m_ladder;
};

TEST(Day, EndsWhereTheNetworkAndItsHeatAreAtRest) {
  const DayCordLike thin{16, 30.0};
  const DayCordLike coil{14, 20.0, tables::Laying::Coiled, 8.0};
  const Day day = DayBuilder()
                      .circuit(thin)
                      .circuit(coil)
                      .load(0, testing::constantPower(1100, 120, 60), 0)
                      .load(1, impedanceOhm({9.0, 3.0}), 600)
                      .forHours(12);
  DayOptions options;
  options.sampleEvery = day.until;
  const Sample end = runDay(day, options).samples.back();
  network::Network network = day.network;
  network.circuits[0].loads[0].law = testing::constantPower(1100, 120, 60);
  network.circuits[1].loads[0].law = impedanceOhm({9.0, 3.0});
  const Settled settled =
      settle(network, {{0, 1, std::make_shared<RestedCord>(thin)}, {1, 1, std::make_shared<RestedCord>(coil)}});
  ASSERT_TRUE(settled.atRest);
  for (std::size_t i = 0; i < 2; ++i) {
    EXPECT_NEAR(end.loadV[i][0], std::abs(settled.warm.circuits[i].loads[0].voltageV), 0.02) << i;
    const double rmsA = settled.warm.circuits[i].branches[1].poleRmsA[0];
    const auto rest = physics::steadyOf(testing::ladderOf(i == 0 ? thin : coil), rmsA * ampere, testing::kDayAir);
    EXPECT_NEAR(end.conductors[i].celsius(), rest->conductor.celsius(), 0.1) << i;
    EXPECT_GT(end.conductors[i].celsius(), 35.0) << i;
  }
}

// The worst difference between the conductors of two runs at their samples.
double worstK(const DayResult& a, const DayResult& b) {
  double worst = 0.0;
  for (std::size_t i = 0; i < a.samples.size(); ++i) {
    for (std::size_t c = 0; c < a.samples[i].conductors.size(); ++c) {
      worst = std::max(worst, std::abs((a.samples[i].conductors[c] - b.samples[i].conductors[c]).si()));
    }
  }
  return worst;
}

Day busyDay() {
  DayBuilder builder;
  builder.circuit({16, 30.0}).circuit({14, 15.0, tables::Laying::Coiled, 10.0}).circuit({12, 30.0});
  builder.load(0, testing::constantPower(1200, 120, 60), 0, 5000).load(0, impedanceOhm({40.0, 0.0}), 2000, 9000);
  builder.load(2, fixedCurrent(14.0, 0.8), 300, 8000);
  for (int i = 0; i < 6; ++i) builder.load(1, fixedCurrent(11.0), 1200.0 * i, 1200.0 * i + 700.0);
  return builder.forHours(3);
}

TEST(Day, HalvingItsStepsChangesNothingVisible) {
  const Day day = busyDay();
  DayOptions options;
  options.sampleEvery = 300.0 * second;
  const DayResult usual = runDay(day, options);
  options.movedK /= 2.0;
  options.longestLook = options.longestLook / 2.0;
  const DayResult finer = runDay(day, options);
  EXPECT_GT(finer.looks, usual.looks);
  EXPECT_LT(worstK(usual, finer), 0.1);
  options.longestLook = 1.0 * second;
  options.movedK = 1e-3;
  options.wholePanels = true;
  EXPECT_LT(worstK(usual, runDay(day, options)), 0.2);
}

// What was made in a metre of its copper has left through its surface once it is as cool as before.
TEST(Day, GivesOffTheHeatThatItMade) {
  const DayCordLike cord{14, 20.0};
  const Day day = DayBuilder().circuit(cord).load(0, impedanceOhm({8.0, 0.0}), 60, 3000).forHours(6);
  DayOptions options;
  options.sampleEvery = 5.0 * second;
  const DayResult result = runDay(day, options);
  const physics::CordLadder ladder = testing::ladderOf(cord);
  double madeJ = 0.0;
  double leftJ = 0.0;
  for (std::size_t i = 1; i < result.samples.size(); ++i) {
    const Sample& before = result.samples[i - 1];
    const Sample& now = result.samples[i];
    const auto madeW = [&](const Sample& sample) {
      return before.conductorA[0] * before.conductorA[0] * ladder.ohmPerM20 *
             (1.0 + ladder.alphaPerK * (sample.conductors[0].celsius() - 20.0));
    };
    const auto leftW = [&](const Sample& sample) {
      return ladder.surface.lossWPerM(sample.surfaces[0], testing::kDayAir);
    };
    madeJ += 2.5 * (madeW(before) + madeW(now));
    leftJ += 2.5 * (leftW(before) + leftW(now));
  }
  EXPECT_GT(madeJ, 1000.0);
  EXPECT_NEAR(leftJ, madeJ, 0.005 * madeJ);
  EXPECT_NEAR(result.samples.back().conductors[0].celsius(), testing::kDayAir.celsius(), 0.05);
}

TEST(Day, TripsWhenTheReplicaSays) {
  const Day day = DayBuilder().circuit({}, kTwenty).load(0, fixedCurrent(27.0), 100).forHours(2);
  const auto times = physics::trip(kTwenty, 27.0 * ampere, {}, calibrationAir());
  const DayResult result = runDay(day);
  EXPECT_NEAR(result.trips[0].earliest->si(), 100 + times.earliest->si(), 0.01);
  EXPECT_NEAR(result.trips[0].likely->si(), 100 + times.likely->si(), 0.01);
  EXPECT_NEAR(*firstS(result, EventKind::Trip), 100 + times.likely->si(), 0.01);
  EXPECT_NEAR(result.trips[0].latest->si(), 100 + times.latest->si(), 0.01);  // as if what flowed went on
  DayOptions late;
  late.acting = Acting::Latest;
  EXPECT_NEAR(runDay(day, late).trips[0].latest.value_or(units::Duration{}).si(), 100 + times.latest->si(), 1.0);
}

TEST(Day, BeginsItsBreakersFromWhatHasLongBeenOn) {
  Day day = DayBuilder().circuit({}, kTwenty).load(0, fixedCurrent(15.0), 100).forHours(1);
  day.network.circuits[0].loads.push_back({"standing", 1, 0, std::nullopt, fixedCurrent(12.0)});
  const auto times = physics::trip(kTwenty, 27.0 * ampere, 12.0 * ampere, calibrationAir());
  EXPECT_NEAR(runDay(day).trips[0].likely->si(), 100 + times.likely->si(), 0.05);
}

TEST(Day, GoesOnWithoutTheCircuitThatTripped) {
  const Day day = DayBuilder()
                      .circuit({}, kTwenty)
                      .circuit({}, kTwenty)
                      .load(0, fixedCurrent(30.0), 0)
                      .load(0, fixedCurrent(5.0), 3600)
                      .load(1, fixedCurrent(10.0), 0)
                      .forHours(2);
  DayOptions options;
  options.sampleEvery = 60.0 * second;
  const DayResult result = runDay(day, options);
  const double tripS = *firstS(result, EventKind::Trip);
  for (const Sample& sample : result.samples) {
    if (sample.at.si() > tripS) {
      EXPECT_EQ(sample.circuitA[0], 0.0) << sample.at.si();
    }
    EXPECT_NEAR(sample.circuitA[1], 10.0, 1e-6);
  }
  // The load that was to come on there later has nothing to come on with.
  for (const Event& event : result.events) EXPECT_FALSE(event.kind == EventKind::On && event.load.load == 1);
}

TEST(Day, GoesOnWhereTheBreakerDoesNotAct) {
  Day day = DayBuilder().circuit({16, 20.0}, kTwenty).load(0, fixedCurrent(27.0), 0).forHours(2);
  DayOptions options;
  options.sampleEvery = day.until;
  const double coolC = runDay(day, options).peaks[0].conductor.celsius();
  options.acting = Acting::None;
  const DayResult stuck = runDay(day, options);
  EXPECT_FALSE(firstS(stuck, EventKind::Trip).has_value());
  EXPECT_TRUE(stuck.trips[0].likely.has_value());  // when it was to
  EXPECT_NEAR(stuck.samples.back().circuitA[0], 27.0, 1e-6);
  EXPECT_GT(stuck.peaks[0].conductor.celsius(), coolC + 20.0);
  EXPECT_TRUE(firstS(stuck, EventKind::OverLimit).has_value());
  day.protectedPoles[0].acts = false;
  EXPECT_FALSE(firstS(runDay(day), EventKind::Trip).has_value());
}

TEST(Day, TellsWhenAConductorPassesItsLimit) {
  const DayCordLike coil{16, 15.0, tables::Laying::Coiled, 12.0};
  const Day day = DayBuilder(0.0).circuit(coil).load(0, fixedCurrent(12.0), 600).forHours(2);
  physics::LadderRun run(testing::ladderOf(coil), testing::kDayAir);
  const auto reached = run.advanceUntil(12.0 * ampere, 7200.0 * second, units::Temperature::fromCelsius(60.0));
  ASSERT_TRUE(reached.has_value());
  const DayResult result = runDay(day);
  EXPECT_NEAR(*firstS(result, EventKind::OverLimit), 600 + reached->si(), 1.0);
  EXPECT_EQ(result.peaks[0].limitAt->si(), *firstS(result, EventKind::OverLimit));
}

// Of all motors that run through the cold cord, the one that just does.
TEST(Day, StallsAMachineOnceItsCordIsWarmAndTripsItsBreaker) {
  const auto dayWith = [](double pullOutV) {
    return DayBuilder(0.0)
        .circuit({16, 31.0}, kTwenty)
        .load(0, testing::motor({15, 120, pullOutV, 0.85, 70}), 0)
        .forHours(2);
  };
  double pullOutV = 112.0;
  while (firstS(runDay(dayWith(pullOutV)), EventKind::Stall) == 0.0) pullOutV -= 0.1;
  const DayResult result = runDay(dayWith(pullOutV));
  const auto stallS = firstS(result, EventKind::Stall);
  ASSERT_TRUE(stallS.has_value()) << pullOutV;
  EXPECT_GT(*stallS, 5.0);
  const auto tripS = firstS(result, EventKind::Trip);
  ASSERT_TRUE(tripS.has_value());
  EXPECT_GT(*tripS, *stallS);
  EXPECT_LT(*tripS, *stallS + 60.0);
}

TEST(Day, LetsAStartsPeakThroughOrNotByTheBreakersLetter) {
  const StartPeak peak{impedanceOhm(120.0 / 90.0), 0.3 * second};
  const auto tripsBy = [&](physics::BreakerKind kind) {
    const Day day = DayBuilder(0.0)
                        .circuit({10, 1.0}, physics::Breaker{16.0 * ampere, kind})
                        .load(0, fixedCurrent(8.0), 60, std::nullopt, peak)
                        .forHours(1);
    return firstS(runDay(day), EventKind::Trip);
  };
  ASSERT_TRUE(tripsBy(physics::BreakerKind::IecB).has_value());
  EXPECT_NEAR(*tripsBy(physics::BreakerKind::IecB), 60.0, 0.2);
  EXPECT_FALSE(tripsBy(physics::BreakerKind::IecD).has_value());
}

TEST(Day, KeepsACordWarmThatIsCarriedElsewhere) {
  DayBuilder builder;
  const DayCordLike cord{16, 20.0};
  builder.circuit(cord).circuit(cord).load(0, fixedCurrent(15.0), 0, 3600).load(1, fixedCurrent(15.0), 3660);
  Day day = builder.forHours(1.1);
  day.conductors[0].places.push_back(day.conductors[1].places[0]);
  day.conductors.pop_back();
  DayOptions options;
  options.sampleEvery = 60.0 * second;
  const DayResult moved = runDay(day, options);
  EXPECT_GT(moved.samples[61].conductors[0].celsius(), 38.0);  // a minute later, in its new place
  EXPECT_NEAR(moved.samples[61].conductorA[0], 15.0, 1e-6);
}

TEST(Day, LaysACordOtherwiseWithoutAJump) {
  const DayCordLike flat{14, 20.0};
  Day day = DayBuilder().circuit(flat).load(0, fixedCurrent(12.0), 0).forHours(3);
  Change change;
  change.at = 3600.0 * second;
  change.kind = ChangeKind::Lay;
  change.laying = testing::warmthOf({14, 20.0, tables::Laying::Coiled, 10.0});
  day.changes.push_back(change);
  DayOptions options;
  options.sampleEvery = 1.0 * second;
  const DayResult result = runDay(day, options);
  EXPECT_NEAR(result.samples[3602].conductors[0].celsius(), result.samples[3599].conductors[0].celsius(), 0.5);
  EXPECT_GT(result.samples.back().conductors[0].celsius(), result.samples[3599].conductors[0].celsius() + 10.0);
  EXPECT_EQ(*firstS(result, EventKind::Lay), 3600.0);
}

TEST(Day, StopsWhenAskedAndKeepsWhatItHas) {
  std::atomic<bool> stop{false};
  DayOptions options;
  options.sampleEvery = 60.0 * second;
  options.progress.stop = &stop;
  std::vector<double> reported;
  options.progress.report = [&](double done) {
    reported.push_back(done);
    if (done > 0.3) stop = true;
  };
  const DayResult result = runDay(busyDay(), options);
  EXPECT_TRUE(result.stopped);
  EXPECT_TRUE(std::is_sorted(reported.begin(), reported.end()));
  EXPECT_GT(result.samples.size(), 10U);
  EXPECT_LT(result.samples.size(), 120U);
  EXPECT_FALSE(runDay(busyDay()).stopped);
}

}  // namespace
}  // namespace cordreach::timeline
