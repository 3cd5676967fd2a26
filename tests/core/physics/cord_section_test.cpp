// SPDX-License-Identifier: GPL-3.0-or-later
// How a laying becomes a ladder.
#include "physics/cord_section.h"

#include <numbers>

#include <gtest/gtest.h>

#include "base/contract.h"

namespace cordreach::physics {
namespace {

using tables::Laying;
using units::WireSize;

CordSection section(Laying laying, double turns = 0.0) {
  return {.size = WireSize::awg(16), .laying = laying, .turns = turns};
}

TEST(HankLadder, HoldsTheHeatAndCopperOfAllItsTurns) {
  const CordLadder one = ladderOf(section(Laying::Floor), Corner::Likely);
  const CordLadder ten = ladderOf(section(Laying::Coiled, 10), Corner::Likely);
  const auto whole = [](const CordLadder& l) {
    return l.capacityJPerMK[0] + l.capacityJPerMK[1] + l.capacityJPerMK[2];
  };
  EXPECT_NEAR(whole(ten), 10.0 * whole(one), 1e-9);
  EXPECT_NEAR(ten.ohmPerM20, 10.0 * one.ohmPerM20, 1e-12);
}

TEST(HankLadder, HasTheCentreOfAUniformlyHeatedCylinder) {
  const CordLadder one = ladderOf(section(Laying::Floor), Corner::Likely);
  const CordLadder ten = ladderOf(section(Laying::Coiled, 10), Corner::Likely);
  const double coreToSurface = one.resistance01 + one.resistance12 + one.resistance2s;
  // Per watt of the whole hank: its centre above its surface, and the copper of one of ten turns above that.
  const double centre = ten.sourceShare * (ten.resistance01 + ten.resistance12) + ten.resistance2s;
  EXPECT_NEAR(centre, 1.0 / (4.0 * std::numbers::pi * 0.20) + coreToSurface / 10.0, 1e-12);
}

TEST(ReelLadder, IsAHankOfItsWindingsCrossSection) {
  const CordLadder reel = ladderOf(section(Laying::Reel, 2), Corner::Likely);
  const CordLadder hank = ladderOf(section(Laying::Coiled, 5), Corner::Likely);
  EXPECT_NEAR(reel.ohmPerM20, hank.ohmPerM20, 1e-12);
  EXPECT_NEAR(reel.surface.diameter.si(), hank.surface.diameter.si(), 1e-12);
}

TEST(CoveredLadder, LeavesThroughTheRug) {
  const CordLadder covered = ladderOf(section(Laying::Covered), Corner::High);
  ASSERT_TRUE(covered.surface.throughCover.has_value());
  EXPECT_DOUBLE_EQ(covered.surface.throughCover->si(), 9.0);
}

TEST(LayingSpread, BracketsTheLikelyRise) {
  for (const Laying laying :
       {Laying::Straight, Laying::Floor, Laying::Carpet, Laying::Covered, Laying::Coiled, Laying::Reel}) {
    EXPECT_LT(layingRiseFactor(laying, Corner::Low), 1.0);
    EXPECT_EQ(layingRiseFactor(laying, Corner::Likely), 1.0);
    EXPECT_GT(layingRiseFactor(laying, Corner::High), 1.0);
  }
}

TEST(LossScale, OutsideItsClampIsOurOwnBug) {
  CordSection scaled = section(Laying::Floor);
  scaled.lossScale = 1.6;
  EXPECT_THROW(static_cast<void>(ladderOf(scaled, Corner::Likely)), base::ContractFailure);
}

}  // namespace
}  // namespace cordreach::physics
