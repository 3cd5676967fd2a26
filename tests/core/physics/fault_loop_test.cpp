// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/fault_loop.h"

#include <gtest/gtest.h>

#include "base/contract.h"
#include "physics/fault_arc.h"
#include "physics/touch_voltage.h"

namespace cordreach::physics {
namespace {

using units::metre;
using units::volt;
using units::WireSize;

units::Temperature celsius(double value) { return units::Temperature::fromCelsius(value); }

FaultLoop cord(double lengthM, double airC = 20.0) {
  return conductorLoop(WireSize::awg(16), tables::Metal::Copper, WireUse::Cord, lengthM * metre, celsius(airC));
}

TEST(FaultLoop, CountsEveryConductorOutAndBack) {
  const FaultLoop loop = cord(30.0) + cord(10.0);
  EXPECT_NEAR(loop.ohm().real(), 2.0 * 40.0 * cordResistance(WireSize::awg(16), celsius(20)).si(), 1e-12);
  EXPECT_EQ(loop.lineOhm, loop.returnOhm);
}

TEST(FaultLoop, CurrentFallsWithHeatJointsAndVolts) {
  const units::Current cold = boltedCurrent(120.0 * volt, cord(30.0));
  const units::Current hot = boltedCurrent(120.0 * volt, cord(30.0, 60.0));
  EXPECT_NEAR(cold / hot, resistanceRatio(tables::Metal::Copper, celsius(60)), 1e-12);
  EXPECT_LT(boltedCurrent(120.0 * volt, cord(30.0) + jointsLoop()), cold);
  EXPECT_NEAR(boltedCurrent(120.0 * volt, cord(30.0), leastVoltageFactor()) / cold, 0.95, 1e-12);
}

TEST(FaultLoop, RefusesALoopOfNothing) {
  EXPECT_THROW(static_cast<void>(boltedCurrent(120.0 * volt, {})), base::ContractFailure);
}

TEST(Arc, LetsHalfToThreeQuartersThrough) {
  const ArcCurrent arc = arcCurrent(200.0 * units::ampere);
  EXPECT_NEAR(arc.low.si(), 100.0, 1e-12);
  EXPECT_NEAR(arc.high.si(), 150.0, 1e-12);
}

TEST(TouchVoltage, IsTheReturnsShareOfTheVolts) {
  EXPECT_NEAR(touchVoltage(120.0 * volt, {0.2, 0.4}).si(), 80.0, 1e-12);
  EXPECT_NEAR(touchVoltage(230.0 * volt, {{0.3, 0.4}, {0.3, 0.4}}).si(), 115.0, 1e-12);
}

}  // namespace
}  // namespace cordreach::physics
