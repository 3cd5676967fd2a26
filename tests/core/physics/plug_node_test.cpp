// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/plug_node.h"

#include <gtest/gtest.h>

#include <cmath>

namespace cordreach::physics {
namespace {

using units::ampere;
using units::Duration;
using units::kelvin;
using units::minute;
using units::ohm;
using units::Temperature;
using units::WireSize;

const Temperature kRoom = Temperature::fromCelsius(25.0);

PlugNode nodeOf(PlugContacts contacts) { return {WireSize::awg(14), contacts, kRoom}; }

TEST(PlugNode, SettlesWhereTheSteadyRiseStands) {
  const auto contacts = contactsOf(ContactClass::Worn);
  PlugNode node = nodeOf(contacts);
  node.advance(15.0 * ampere, 600.0 * minute);
  const auto steady = contactHeat(WireSize::awg(14), ContactClass::Worn, 15.0 * ampere).likely.rise;
  EXPECT_NEAR(node.rise().in(kelvin), steady.in(kelvin), 1e-9);
  EXPECT_NEAR(node.now().celsius(), 25.0 + steady.in(kelvin), 1e-9);
}

TEST(PlugNode, HasDoneSixtyThreePercentAfterItsTimeConstantWhateverTheStretches) {
  const auto contacts = contactsOf(ContactClass::Worn);
  const Duration constant = plugTimeConstant(WireSize::awg(14));
  PlugNode whole = nodeOf(contacts);
  PlugNode pieces = nodeOf(contacts);
  whole.advance(15.0 * ampere, constant);
  for (int i = 0; i < 7; ++i) pieces.advance(15.0 * ampere, constant / 7.0);
  const double end = whole.steadyRise(15.0 * ampere).in(kelvin);
  EXPECT_NEAR(whole.rise().in(kelvin), end * (1.0 - std::exp(-1.0)), 1e-9);
  EXPECT_NEAR(pieces.rise().in(kelvin), whole.rise().in(kelvin), 1e-9);
}

// The trainer's contact: 0.05 ohm at 15 A is 11 W in one place.
TEST(PlugNode, KeepsItsEnergy) {
  const PlugContacts loose{0.05 * ohm, 0.001 * ohm};
  PlugNode node = nodeOf(loose);
  const double powerW = 15.0 * 15.0 * 0.051;
  EXPECT_NEAR(powerW, 11.475, 1e-12);
  const double capacityJPerK = 50.0;
  const double awayWPerK = powerW / node.steadyRise(15.0 * ampere).in(kelvin);
  double storedJ = 0;
  double lostJ = 0;
  constexpr double kStepS = 0.5;
  for (int i = 0; i < 1200; ++i) {
    const double before = node.rise().in(kelvin);
    node.advance(15.0 * ampere, kStepS * units::second);
    storedJ += capacityJPerK * (node.rise().in(kelvin)-before);
    lostJ += awayWPerK * 0.5 * (before + node.rise().in(kelvin)) * kStepS;
  }
  EXPECT_NEAR(storedJ + lostJ, powerW * 1200 * kStepS, 1e-3 * powerW * 1200 * kStepS);
}

TEST(PlugNode, SaysWhenItPassesItsLimitAndWhenItNeverDoes) {
  PlugNode loose = nodeOf({0.05 * ohm, 0.001 * ohm});
  const auto at = loose.timeToRise(30.0 * kelvin, 15.0 * ampere, 60.0 * minute);
  ASSERT_TRUE(at);
  loose.advance(15.0 * ampere, *at);
  EXPECT_NEAR(loose.rise().in(kelvin), 30.0, 1e-6);
  EXPECT_EQ(loose.timeToRise(30.0 * kelvin - 1e-6 * kelvin, 15.0 * ampere, 60.0 * minute), Duration{});
  EXPECT_FALSE(nodeOf(contactsOf(ContactClass::Healthy)).timeToRise(30.0 * kelvin, 15.0 * ampere, 1e4 * minute));
  EXPECT_FALSE(nodeOf({0.05 * ohm, 0.001 * ohm}).timeToRise(30.0 * kelvin, 15.0 * ampere, 1.0 * units::second));
}

TEST(PlugNode, SaysThatAFailingContactIsBeyondTheModel) {
  PlugNode node = nodeOf(contactsOf(ContactClass::Failing, Corner::High));
  node.advance(15.0 * ampere, 1.0 * minute);
  EXPECT_FALSE(node.beyondModel());
  node.advance(15.0 * ampere, 120.0 * minute);
  EXPECT_TRUE(node.beyondModel());
  node.advance(0.0 * ampere, 120.0 * minute);
  EXPECT_TRUE(node.beyondModel()) << "what burnt stays burnt";
}

TEST(PlugNode, KeepsItsTemperatureWhenTheAirChanges) {
  PlugNode node = nodeOf(contactsOf(ContactClass::Worn));
  node.advance(15.0 * ampere, 10.0 * minute);
  const double before = node.now().celsius();
  node.changeSurroundings(Temperature::fromCelsius(35.0));
  EXPECT_NEAR(node.now().celsius(), before, 1e-9);
  node.advance(0.0 * ampere, 1000.0 * minute);
  EXPECT_NEAR(node.now().celsius(), 35.0, 1e-6);
}

TEST(ResistanceAt, HoldsAGlowingContactAtItsVoltage) {
  EXPECT_EQ(resistanceAt(0.05 * ohm, 15.0 * ampere), 0.05 * ohm);
  EXPECT_NEAR((resistanceAt(0.5 * ohm, 15.0 * ampere) * (15.0 * ampere)).in(units::volt), 2.333, 1e-9);
  EXPECT_EQ(resistanceAt(0.5 * ohm, 0.0 * ampere), 0.5 * ohm);
}

}  // namespace
}  // namespace cordreach::physics
