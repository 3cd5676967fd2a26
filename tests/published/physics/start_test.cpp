// SPDX-License-Identifier: GPL-3.0-or-later
// Starts against published laws and our own reference examples. Beside each: source and status.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/physics/load_test_support.h"
#include "physics/pad_drag.h"
#include "physics/plate_induction.h"
#include "physics/start_class.h"
#include "physics/start_dc.h"
#include "physics/start_induction.h"

namespace cordreach::physics {
namespace {

// Our reference burnisher (own): K 0.459, Ra 0.6 ohm, J 0.107 kg m², 120 V behind a bridge. Source and cord of 0.3, 0.7
// and 1.3 ohm give 111, 76 and 51 A first and 1.4, 2.1 and 3.1 s to 95 %, with a line ohm taken as 1.11 dc ohms.
constexpr double kRows[3][3] = {{0.3, 111.0, 1.4}, {0.7, 76.0, 2.1}, {1.3, 51.0, 3.1}};
constexpr double kDcV = kBridgeMeanOfRms * 120.0 - kBridgeDropV;

TEST(PublishedStart, ReferenceBurnisherWithItsOwnLineFactor) {
  const DcStart burnisher{{0.459, 0.6 * units::ohm}, 0.107, units::Torque::fromSi(0.6)};
  for (const auto& row : kRows) {
    const auto inFront = 1.11 * row[0] * units::ohm;
    const StartRun run = startDc(burnisher, kDcV * units::volt, inFront);
    EXPECT_NEAR(run.peak.si(), row[1], 0.01 * row[1]);
    EXPECT_NEAR(run.time95->si(), row[2], 0.025 * row[2]);  // printed to two digits
  }
}

// A line ohm is one dc ohm: a bridge's mean is that of its rectified line. Ours is then 4 to 8 % off the example, which
// counts the factor between rms and mean twice.
TEST(PublishedStart, ReferenceBurnisherBehindItsBridge) {
  RectifiedStart start{{120.0 * units::volt, 14.55 * units::ampere, 2000.0, 0.0}, 0.107};
  for (const auto& row : kRows) {
    const StartRun run = startRectified(start, {120.0, {row[0], 0.0}});
    EXPECT_NEAR(run.peak.si() / kLineRmsPerDcAmp, row[1], 0.08 * row[1]);
    EXPECT_GT(run.peak.si() / kLineRmsPerDcAmp, row[1]);
    EXPECT_NEAR(run.time95->si(), row[2], 0.08 * row[2]);
  }
}

// The same machine runs at 1775 rpm on 108 V and at 1809 behind 0.7 ohm, at 14.55 A, with the reference drag of 5.42 N
// m.
TEST(PublishedStart, ReferenceBurnisherRunsSlowerOnLowVolts) {
  RectifiedStart start{{120.0 * units::volt, 14.55 * units::ampere, 2000.0, 1.0}, 0.107};
  EXPECT_NEAR(*startRectified(start, {108.0, {0.0, 0.0}}).endRpm, 1775.0, 5.0);
  EXPECT_NEAR(*startRectified(start, {120.0, {0.7, 0.0}}).endRpm, 1809.0, 5.0);
  EXPECT_NEAR(dcBehindBridge(start).motor.constantVsPerRad, 0.459, 0.003);
  EXPECT_NEAR(dcBehindBridge(start).load.si(), 5.42 + 0.6, 0.03);
}

// Relative start times when motor torque is 1.6 and load 0.35 of rated at every speed (own arithmetic on the V² law of
// the handbook table, seen). A dc loop whose torque hardly falls with speed is such a motor.
TEST(PublishedStart, RelativeStartTimes) {
  constexpr double kShares[6][2] = {{1.00, 1.00}, {.95, 1.14}, {.90, 1.32}, {.85, 1.55}, {.80, 1.85}, {.75, 2.27}};
  const auto timeAt = [](double share) {
    RunUp runUp;
    runUp.inertiaKgM2 = 0.1;
    runUp.topRadPerS = 100.0;
    runUp.at = [share](double) {
      RunUpPoint point;
      point.motorNm = 1.6 * share * share;
      point.loadNm = 0.35;
      return point;
    };
    return integrate(runUp).time95->si();
  };
  EXPECT_NEAR(timeAt(1.0), runUpTime(0.1, 95.0 * 30.0 / std::numbers::pi, units::Torque::fromSi(1.25)).si(), 1e-9);
  for (const auto& row : kShares) {
    EXPECT_NEAR(timeAt(row[0]) / timeAt(1.0), row[1], 0.005) << row[0];
    EXPECT_NEAR(*relativeRunUpTime(row[0], 1.6, 0.35), row[1], 0.005) << row[0];
  }
}

// Handbook table of the effect of voltage (seen): starting torque -19 % and +21 %, starting amps -10 to -12 % and +10
// to +12 % at 90 and 110 % of volts.
TEST(PublishedStart, StartingTorqueAndAmpsFollowTheHandbookTable) {
  Nameplate plate = plateOf(LoadModel::Induction, 115.0, 15.0);
  plate.speedRpm = 1725.0;
  const InductionStart start{inductionLoadOf(plate).value(), 0.02, 97.5, 2.5};
  const auto first = [&](double share) { return startInduction(start, {115.0 * share, {0.0, 0.0}}).peak.si(); };
  EXPECT_NEAR(first(0.9) / first(1.0) - 1.0, -0.10, 0.001);
  EXPECT_NEAR(first(1.1) / first(1.0) - 1.0, 0.10, 0.001);
  const double ratio = first(0.9) * first(0.9) / (first(1.0) * first(1.0));
  EXPECT_NEAR(ratio - 1.0, -0.19, 0.001);  // torque: the square of the amps through one rotor resistance
}

// Common practice: 0.2 to 1 s for a swing machine, 1 to 3 s for a dc burnisher and up to 5 on a long thin cord.
TEST(PublishedStart, TimesLieInsideCommonPractice) {
  RectifiedStart dc{{115.0 * units::volt, 14.6 * units::ampere, 2000.0, 0.0}, 0.107};
  EXPECT_GT(startRectified(dc, {120.0, {0.3, 0.0}}).time95->si(), 1.0);
  EXPECT_LT(startRectified(dc, {120.0, {0.9, 0.0}}).time95->si(), 3.0);
  EXPECT_LT(startRectified(dc, {120.0, {1.6, 0.0}}).time95->si(), 5.0);
}

}  // namespace
}  // namespace cordreach::physics
