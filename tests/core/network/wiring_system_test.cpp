// SPDX-License-Identifier: GPL-3.0-or-later
// Volts between the conductors of each wiring system, and what their impedances do.
#include "network/wiring_system.h"

#include <gtest/gtest.h>

namespace cordreach::network {
namespace {

TEST(WiringSystem, GivesTheSystemsVoltsBetweenItsPhases) {
  const auto between = [](const Supply& supply, std::size_t a, std::size_t b) {
    return std::abs(supply.sourceV[a] - supply.sourceV[b]);
  };
  EXPECT_NEAR(between(utilitySplitPhase(), 0, 1), 240.0, 1e-9);
  EXPECT_NEAR(between(utility208Y(), 0, 1), 207.846, 1e-3);
  EXPECT_NEAR(between(utility208Y(), 1, 2), 207.846, 1e-3);
  EXPECT_NEAR(between(utility230Y400(), 2, 0), 398.372, 1e-3);
  EXPECT_EQ(utility230().sourceV.size(), 1u);
}

TEST(WiringSystem, PutsTheDefaultLoopInBothConductorsAndSaysWhoseChoiceItIs) {
  const Supply supply = utilitySplitPhase();
  EXPECT_NEAR((supply.source.poleOhm + supply.source.neutralOhm).real(), 0.06, 1e-12);
  EXPECT_EQ(supply.impedance.status, tables::SourceStatus::Own);
  EXPECT_FALSE(supply.limitsItsCurrent);
}

TEST(WiringSystem, FindsATransformersLoop) {
  EXPECT_NEAR(transformerLoop(120.0 * units::volt, 12500.0 * units::watt, 0.02).in(units::ohm), 0.02304, 1e-9);
}

TEST(WiringSystem, DroopsALocalSupplyAtItsRating) {
  const Supply single = generator(LocalOutput::Single120, 3600.0 * units::watt);
  EXPECT_NEAR(std::abs(single.source.poleOhm) * 30.0, 6.0, 1e-9);
  const Supply split = generator(LocalOutput::Split120And240, 7200.0 * units::watt);
  EXPECT_NEAR(std::abs(split.source.poleOhm) * 30.0, 6.0, 1e-9);
  EXPECT_EQ(split.key, "generator_120_240");
  EXPECT_TRUE(inverter(LocalOutput::Single230, 2300.0 * units::watt).limitsItsCurrent);
}

}  // namespace
}  // namespace cordreach::network
