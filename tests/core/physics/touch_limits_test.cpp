// SPDX-License-Identifier: GPL-3.0-or-later
// Limits, their order and their sources.
#include "physics/touch_limits.h"

#include <gtest/gtest.h>

namespace cordreach::physics {
namespace {

units::Temperature celsius(double value) { return units::Temperature::fromCelsius(value); }

TEST(TouchLimits, RiseFromWarmToShortCircuit) {
  EXPECT_LT(jacketWarm().value, jacketTooHotToHold().value);
  EXPECT_LT(jacketTooHotToHold().value, jacketTooHotToTouch().value);
  EXPECT_LT(unmarkedCordRating().value, conductorDamage().value);
  EXPECT_LT(conductorDamage().value, conductorShortCircuit().value);
}

TEST(TouchLimits, NameTheirSource) {
  EXPECT_NE(jacketTooHotToTouch().source.text.find("62368-1"), std::string::npos);
  EXPECT_EQ(jacketTooHotToTouch().source.status, tables::SourceStatus::Seen);
}

TEST(JacketFeel, ChangesJustAboveEachLimit) {
  EXPECT_EQ(jacketFeel(celsius(48)), JacketFeel::Cool);
  EXPECT_EQ(jacketFeel(celsius(48.1)), JacketFeel::WarmToHold);
  EXPECT_EQ(jacketFeel(celsius(60)), JacketFeel::WarmToHold);
  EXPECT_EQ(jacketFeel(celsius(60.1)), JacketFeel::TooHotToHold);
  EXPECT_EQ(jacketFeel(celsius(77.1)), JacketFeel::TooHotToTouch);
}

TEST(BurnThreshold, FallsWithContactTimeAndIsLowerForMetal) {
  for (const double seconds : {1.0, 10.0, 60.0}) {
    EXPECT_LT(burnThreshold(TouchMaterial::BareMetal, seconds).value,
              burnThreshold(TouchMaterial::Plastic, seconds).value);
  }
  EXPECT_LT(burnThreshold(TouchMaterial::Plastic, 30000).value, burnThreshold(TouchMaterial::Plastic, 60).value);
}

}  // namespace
}  // namespace cordreach::physics
