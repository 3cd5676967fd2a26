// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/start_induction.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/physics/load_test_support.h"
#include "physics/plate_induction.h"

namespace cordreach::physics {
namespace {

InductionStart slowMachine(double drag = 1.0) {
  Nameplate plate = plateOf(LoadModel::Induction, 115.0, 12.0);
  plate.speedRpm = 175.0;
  InductionStart start{inductionLoadOf(plate).value(), 1.2, 78.0, 2.5};
  start.load.torqueFactor = drag;
  return start;
}

TEST(StartWinding, HasTheLockedRotorAmpsAndTorque) {
  const InductionStart start = slowMachine();
  const StartWinding winding = startWindingOf(start);
  EXPECT_NEAR(std::hypot(winding.r1Ohm + winding.r2Ohm, winding.xOhm), 115.0 / 78.0, 1e-12);
  const double airGapW = 78.0 * 78.0 * winding.r2Ohm;
  EXPECT_NEAR((airGapW - start.load.fit.lossAirGapW) / start.load.fit.loadAirGapW, 2.5, 1e-9);
  EXPECT_GT(winding.r1Ohm, 0.0);
}

TEST(StartInduction, DrawsLockedRotorAmpsFirstAndItsRunningAmpsInTheEnd) {
  const StartRun run = startInduction(slowMachine(), {115.0, {0.0, 0.0}});
  ASSERT_TRUE(run.completes());
  EXPECT_NEAR(run.samples.front().totalRmsA, 78.0, 1e-9);
  EXPECT_NEAR(run.peak.si(), 78.0, 1e-9);
  EXPECT_NEAR(run.settled.si(), 12.0, 0.5);
  EXPECT_NEAR(*run.endRpm, 175.0, 0.5);
  EXPECT_GT(run.time95->si(), 0.2);  // 0.2 to 1 s is common
  EXPECT_LT(run.time95->si(), 1.0);
}

TEST(StartInduction, EndsWhereTheNetworkSaysItRuns) {
  const Thevenin supply{120.0, {0.6, 0.06}};
  const InductionStart start = slowMachine();
  const StartRun run = startInduction(start, supply);
  const auto law = makeInductionLaw(start.load);
  const StartSample& last = run.samples.back();
  const std::complex<double> y = law->at(last.voltageV).admittanceS;
  EXPECT_NEAR(last.voltageV, std::abs(120.0 / (1.0 + supply.ohm * y)), 0.3);
  EXPECT_NEAR(*run.endRpm, *law->at(last.voltageV).speedRpm, 0.2);
}

TEST(StartInduction, StandsWhenItsTorqueFallsShortOfTheLoad) {
  const StartRun run = startInduction(slowMachine(), {120.0, {1.8, 0.1}});
  EXPECT_FALSE(run.completes());
  EXPECT_EQ(run.samples.size(), 1u);
  EXPECT_NEAR(run.settled.si(), run.peak.si(), 1e-12);
  // The same with its load off comes up.
  EXPECT_TRUE(startInduction(slowMachine(0.0), {120.0, {1.8, 0.1}}).completes());
}

// Enough torque with its start winding, not enough once the switch drops it out: it hangs at the switch.
TEST(StartInduction, HangsAtTheSwitchWhenTheRunningWindingIsTooWeak) {
  InductionStart start = slowMachine(1.7);
  start.lockedRotorRatio = 3.5;
  const StartRun run = startInduction(start, {120.0, {0.6, 0.06}});
  EXPECT_FALSE(run.completes());
  ASSERT_GT(run.samples.size(), 1u);
  EXPECT_NEAR(*run.endRpm, kStartSwitchShare * 175.0 / 0.96, 1.0);
  EXPECT_GT(run.settled.si(), 20.0);
}

}  // namespace
}  // namespace cordreach::physics
