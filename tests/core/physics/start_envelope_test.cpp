// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/start_envelope.h"

#include <gtest/gtest.h>

#include "core/physics/load_test_support.h"

namespace cordreach::physics {
namespace {

const Thevenin kOutlet{120.0, {0.5, 0.05}};

TEST(StartByClass, OfAVacuumFallsFromItsPeakToItsRunningAmps) {
  const Nameplate plate = plateOf(LoadModel::Universal, 115.0, 9.5);
  const StartRun run = startByClass(plate, StartEdge::Typical, kOutlet).value();
  ASSERT_TRUE(run.completes());
  EXPECT_LT(run.peak.si(), 4.5 * 9.5 * 120.0 / 115.0);
  EXPECT_GT(run.peak.si(), 3.0 * 9.5);
  EXPECT_NEAR(run.samples.back().totalRmsA, run.settled.si(), 0.01 * run.peak.si());
  EXPECT_NEAR(run.settled.si(), 9.5, 0.5);
  EXPECT_GE(run.time95->si(), startBand(plate).duration(StartEdge::Typical).si());
  EXPECT_GT(run.i2tA2S, run.settled.si() * run.settled.si() * run.time95->si());
}

TEST(StartByClass, OfACompressorHoldsItsPeak) {
  const Nameplate plate = plateOf(LoadModel::Compressor, 115.0, 5.0);
  const StartRun run = startByClass(plate, StartEdge::Low, kOutlet).value();
  ASSERT_TRUE(run.completes());
  EXPECT_NEAR(run.i2tA2S, run.peak.si() * run.peak.si() * run.time95->si(), 1e-9);
}

TEST(StartByClass, OfACompressorNeverEndsAtLowVolts) {
  const StartRun run =
      startByClass(plateOf(LoadModel::Compressor, 115.0, 10.0), StartEdge::High, {108.0, {0.9, 0.1}}).value();
  EXPECT_FALSE(run.completes());
  EXPECT_EQ(run.settled, run.peak);
}

TEST(StartByClass, OfAHeaterHasNoPeak) {
  const StartRun run = startByClass(plateOf(LoadModel::Resistance, 115.0, 12.0), StartEdge::High, kOutlet).value();
  EXPECT_NEAR(run.peak.si(), run.settled.si(), 1e-9);
  EXPECT_LT(run.time95->si(), 0.01);
}

TEST(StartStretch, GrowsAsVoltsFall) {
  EXPECT_NEAR(*startStretch(LoadModel::Compressor, 0.9), 1.77, 0.01);
  EXPECT_NEAR(*startStretch(LoadModel::Compressor, 0.8), 5.65, 0.05);
  EXPECT_FALSE(startStretch(LoadModel::Compressor, 0.74).has_value());
  EXPECT_NEAR(*startStretch(LoadModel::Universal, 0.8), 1.5625, 1e-12);
  EXPECT_EQ(*startStretch(LoadModel::Universal, 1.1), 1.0);
}

}  // namespace
}  // namespace cordreach::physics
