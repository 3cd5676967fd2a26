// SPDX-License-Identifier: GPL-3.0-or-later
// Plugs: power by class, rise by cord.
#include "physics/contact.h"

#include <gtest/gtest.h>

namespace cordreach::physics {
namespace {

using units::ampere;
using units::WireSize;

const units::Resistance kMilliohm = 1e-3 * units::ohm;

TEST(Contact, PowerIsThatOfBothContacts) {
  const ContactHeat heat = contactHeat(WireSize::awg(14), 2.0 * kMilliohm, 4.0 * kMilliohm, 10.0 * ampere);
  EXPECT_NEAR(heat.power.in(units::watt), 0.6, 1e-12);
}

TEST(Contact, OfAHeavierCordIsCoolerForTheSamePower) {
  double previous = 1e9;
  for (const int gauge : {18, 16, 14, 12, 10}) {
    const double rise = contactHeat(WireSize::awg(gauge), ContactClass::Worn, 15.0 * ampere).likely.rise.si();
    EXPECT_LT(rise, previous) << gauge;
    previous = rise;
  }
}

TEST(Contact, HealthyStaysWithinItsLimitAndWornDoesNotAtFifteenAmperes) {
  const auto healthy = contactHeat(WireSize::awg(16), ContactClass::Healthy, 15.0 * ampere);
  EXPECT_LT(healthy.high.rise, plugRiseLimit());
  const auto worn = contactHeat(WireSize::awg(16), ContactClass::Worn, 15.0 * ampere);
  EXPECT_GT(worn.likely.rise, plugRiseLimit());
  EXPECT_LT(worn.low.rise, worn.likely.rise);
  EXPECT_LT(worn.likely.rise, worn.high.rise);
}

TEST(Contact, VoltageIsHeldAtThatOfAGlowingJoint) {
  const auto glowing = contactHeat(WireSize::awg(14), 10.0 * units::ohm, 0.0 * units::ohm, 15.0 * ampere);
  EXPECT_NEAR(glowing.power.in(units::watt), 35.0, 0.01);
}

TEST(Contact, FailsOnOneSideOnly) {
  const auto failing = contactHeat(WireSize::awg(14), ContactClass::Failing, 10.0 * ampere);
  EXPECT_NEAR(failing.likely.power.in(units::watt), 10.0 + 0.1, 1e-9);
}

}  // namespace
}  // namespace cordreach::physics
