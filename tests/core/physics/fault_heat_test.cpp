// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/fault_heat.h"

#include <gtest/gtest.h>

#include "physics/cord_heat.h"
#include "physics/cord_section.h"
#include "physics/fault_clearing.h"
#include "physics/wire.h"

namespace cordreach::physics {
namespace {

using tables::Laying;
using units::ampere;
using units::second;
using units::volt;
using units::WireSize;

constexpr double kStiffOhm = 1e6;

units::Temperature celsius(double value) { return units::Temperature::fromCelsius(value); }

CordSection section(int gauge, Laying laying = Laying::Floor, double turns = 0.0) {
  return {.size = WireSize::awg(gauge), .laying = laying, .turns = turns};
}

FaultDrive constant(double amps) { return {amps * kStiffOhm * volt, kStiffOhm, 0.0, 0.0}; }

FaultCord coolCord(const CordSection& of) {
  return FaultCord(of, Corner::Likely, {celsius(25), celsius(25)}, celsius(25));
}

// Against the ladder's own method, which finds the surface's temperature at every step.
TEST(FaultHeat, AgreesWithTheLaddersOwnMethod) {
  for (const int gauge : {18, 16, 14, 12, 10}) {
    for (const double amps : {45.0, 80.0, 150.0}) {
      const FaultHeat heat = faultHeat(coolCord(section(gauge)), constant(amps), faultHorizon());
      const auto time = timeToPass(heat, celsius(160));
      if (!time) continue;
      LadderRun run(ladderOf(section(gauge), Corner::Likely), celsius(25));
      run.setToleranceK(1e-3);
      run.advance(amps * ampere, *time);
      EXPECT_NEAR(run.now().conductor.celsius(), 160.0, 1.0) << gauge << " AWG at " << amps << ", " << time->si();
    }
  }
}

TEST(FaultHeat, BeginsAsWarmAsTheCordWas) {
  const auto before = steady(section(16), 13.0 * ampere, celsius(25));
  ASSERT_TRUE(before.has_value());
  const FaultCord warm(section(16), Corner::Likely, *before, celsius(25));
  EXPECT_NEAR(warm.nodesC()[0], before->conductor.celsius(), 1e-9);
  // At rest: the load's own current leaves it as it is.
  const FaultHeat rest = faultHeat(warm, constant(13.0), 60.0 * second);
  EXPECT_NEAR(rest.back().conductor.celsius(), before->conductor.celsius(), 0.2);
  const auto cool = timeToPass(faultHeat(coolCord(section(16)), constant(90.0), faultHorizon()), celsius(160));
  const auto fromWarm = timeToPass(faultHeat(warm, constant(90.0), faultHorizon()), celsius(160));
  ASSERT_TRUE(cool && fromWarm);
  EXPECT_LT(*fromWarm, *cool);
}

TEST(FaultHeat, CurrentFallsAsTheCopperWarms) {
  const FaultDrive drive{120.0 * volt, 0.3, 0.8, temperatureCoefficient(tables::Metal::Copper)};
  const FaultHeat heat = faultHeat(coolCord(section(16)), drive, faultHorizon());
  EXPECT_NEAR(heat.front().current.si(), 120.0 / (0.3 + 0.8 * 1.01965), 0.01);
  for (std::size_t i = 1; i < heat.size(); ++i) {
    EXPECT_LT(heat[i].current, heat[i - 1].current);
    EXPECT_GT(heat[i].conductor, heat[i - 1].conductor);
    EXPECT_LE((heat[i].conductor - heat[i - 1].conductor).si(), 6.5);
  }
}

// A hank's middle is hot and holds its heat: a fault finds it there, and no coil outlasts the same cord laid out.
TEST(FaultHeat, ACoilIsNeverBetterOff) {
  const HeatResult hot{celsius(80), celsius(50)};
  const FaultCord coiled(section(16, Laying::Coiled, 12), Corner::Likely, hot, celsius(25));
  const FaultCord open(section(16), Corner::Likely, hot, celsius(25));
  const auto coil = timeToPass(faultHeat(coiled, constant(100.0), faultHorizon()), celsius(160));
  const auto laid = timeToPass(faultHeat(open, constant(100.0), faultHorizon()), celsius(160));
  ASSERT_TRUE(coil && laid);
  EXPECT_LE(*coil, *laid);
}

TEST(FaultHeat, EndsAtTheModelsEndOrAtTheHorizon) {
  const FaultHeat hot = faultHeat(coolCord(section(18)), constant(200.0), faultHorizon());
  EXPECT_GE(hot.back().conductor, beyondModelTemperature());
  const FaultHeat mild = faultHeat(coolCord(section(12)), constant(20.0), 30.0 * second);
  EXPECT_NEAR(mild.back().time.si(), 30.0, 1e-9);
  EXPECT_FALSE(timeToPass(mild, celsius(160)).has_value());
  EXPECT_EQ(conductorAt(mild, 1000.0 * second), mild.back().conductor);
}

TEST(Clearing, InstantaneousPartActsOnTheFirstCurrent) {
  const OvercurrentDevice twenty{{20.0 * ampere}, BreakerAir::all(celsius(25)), {}};
  const FaultHeat heat = faultHeat(coolCord(section(14)), constant(200.0), faultHorizon());
  EXPECT_NEAR(clearingTime(twenty, TripCurve::Earliest, heat)->si(), 0.008, 1e-9);
  EXPECT_NEAR(clearingTime(twenty, TripCurve::Likely, heat)->si(), 0.017, 1e-9);
  EXPECT_GT(clearingTime(twenty, TripCurve::Latest, heat)->si(), 1.0);
}

TEST(Clearing, FollowsTheReplicaAlongAConstantCurrent) {
  const OvercurrentDevice twenty{{20.0 * ampere}, BreakerAir::all(celsius(25)), 12.0 * ampere};
  const FaultHeat heat = faultHeat(coolCord(section(14)), constant(80.0), faultHorizon());
  for (const TripCurve curve : kTripCurves) {
    const auto plain = tripTime(twenty.breaker, curve, 80.0 * ampere, 12.0 * ampere, celsius(25));
    EXPECT_NEAR(clearingTime(twenty, curve, heat)->si(), plain->si(), 1e-3);
  }
}

TEST(Clearing, AFallingCurrentActsLaterThanItsFirstAndSoonerThanItsLast) {
  const OvercurrentDevice twenty{{20.0 * ampere}, BreakerAir::all(celsius(25)), {}};
  const FaultDrive drive{120.0 * volt, 0.3, 0.8, temperatureCoefficient(tables::Metal::Copper)};
  const FaultHeat heat = faultHeat(coolCord(section(16)), drive, faultHorizon());
  const auto time = clearingTime(twenty, TripCurve::Latest, heat);
  const auto atFirst = tripTime(twenty.breaker, TripCurve::Latest, heat.front().current, {}, celsius(25));
  const auto atLast =
      tripTime(twenty.breaker, TripCurve::Latest, drive.current(conductorAt(heat, *time)), {}, celsius(25));
  ASSERT_TRUE(time && atFirst && atLast);
  EXPECT_GT(*time, *atFirst);
  EXPECT_LT(*time, *atLast);
}

TEST(Clearing, AFuseHasNoInstantaneousPart) {
  const OvercurrentDevice fuse{{20.0 * ampere, BreakerKind::Fuse}, BreakerAir::all(celsius(25)), {}};
  const FaultHeat heat = faultHeat(coolCord(section(14)), constant(250.0), faultHorizon());
  EXPECT_GT(clearingTime(fuse, TripCurve::Likely, heat)->si(), 0.5);
}

}  // namespace
}  // namespace cordreach::physics
