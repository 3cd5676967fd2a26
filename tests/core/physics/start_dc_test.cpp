// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/start_dc.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/physics/load_test_support.h"

namespace cordreach::physics {
namespace {

DcStart burnisher() { return {{0.459, 0.6 * units::ohm}, 0.107, units::Torque::fromSi(0.6)}; }

TEST(StartDc, IsTheClosedExponential) {
  const auto inFront = 0.7 * units::ohm;
  const StartRun run = startDc(burnisher(), 104.0 * units::volt, inFront);
  const double tau = startTimeConstant(burnisher(), inFront).si();
  ASSERT_TRUE(run.completes());
  EXPECT_NEAR(run.time95->si(), std::log(20.0) * tau, 1e-6 * tau);
  const double endA = 0.6 / 0.459;
  for (const StartSample& sample : run.samples) {
    const double amps = endA + (80.0 - endA) * std::exp(-sample.timeS / tau);
    EXPECT_NEAR(sample.totalRmsA, amps, 1e-6 * amps) << sample.timeS;
  }
  EXPECT_NEAR(run.peak.si(), 80.0, 1e-9);
  EXPECT_NEAR(run.lowest.si(), 104.0 - 80.0 * 0.7, 1e-9);
}

TEST(StartDc, NeverBeginsWhenTheLoadHoldsIt) {
  DcStart heavy = burnisher();
  heavy.load = units::Torque::fromSi(0.459 * 80.0 + 0.1);
  const StartRun run = startDc(heavy, 104.0 * units::volt, 0.7 * units::ohm);
  EXPECT_FALSE(run.completes());
  ASSERT_EQ(run.samples.size(), 1u);
  EXPECT_NEAR(run.settled.si(), 80.0, 1e-9);
}

TEST(StartRectified, EndsWhereTheNetworkSaysItRuns) {
  RectifiedStart start{{115.0 * units::volt, 14.6 * units::ampere, 1600.0, 1.0}, 0.107};
  const Thevenin supply{120.0, {0.55, 0.05}};
  const StartRun run = startRectified(start, supply);
  const auto law = makeRectifiedLaw(start.motor);
  EXPECT_NEAR(run.settled.si(), 14.6, 0.2);  // 99.9 % of the way
  const StartSample& last = run.samples.back();
  EXPECT_NEAR(last.voltageV, sourceVoltageV(*law, last.voltageV, 0.0), 1e-9);
  const double steadyV = std::abs(120.0 - supply.ohm * law->at(last.voltageV).admittanceS * last.voltageV);
  EXPECT_NEAR(last.voltageV, steadyV, 0.2);
  EXPECT_NEAR(*run.endRpm, *law->at(last.voltageV).speedRpm, 0.01 * *run.endRpm);
}

TEST(StartRectified, StandsBelowTheVoltsOfItsBridge) {
  RectifiedStart start{{115.0 * units::volt, 14.6 * units::ampere, 1600.0, 1.0}, 0.107};
  const StartRun run = startRectified(start, {4.0, {0.5, 0.0}});
  EXPECT_FALSE(run.completes());
  EXPECT_EQ(run.settled.si(), 0.0);
}

}  // namespace
}  // namespace cordreach::physics
