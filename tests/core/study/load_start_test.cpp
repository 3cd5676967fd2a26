// SPDX-License-Identifier: GPL-3.0-or-later
// What comes on by itself beside a machine, and what is drawn as something comes on.
#include "study/load_start.h"

#include <gtest/gtest.h>

#include "study/assess.h"
#include "study/day_loads.h"
#include "support/small_site.h"

namespace cordreach::study {
namespace {

using tables::LoadClass;
using testing::SmallSite;
using units::ampere;
using units::hour;
using units::minute;

SmallSite coolerBeside(double machineA, double coolerA, LoadClass loadClass = LoadClass::Compressor) {
  SmallSite building;
  building.circuit("1", 20, 60).load("cooler", "1", coolerA, site::Cycle{7.0 * minute, 13.0 * minute});
  site::FixedLoad load = building.site.at<site::FixedLoad>(site::FixedLoadId("cooler"));
  load.loadClass = loadClass;
  building.site.all<site::FixedLoad>().put(load);
  building.machine("M", LoadClass::Resistance, machineA).plug("M", SmallSite::at("1"), {{18.0, 20.0}});
  return building;
}

TEST(LoadStart, ACompressorDrawsItsFiveTimesAndDipsTheMachine) {
  const Answer answer = assess(coolerBeside(6, 6).site);
  ASSERT_EQ(answer.loadStarts.size(), 1U);
  const LoadStart& start = answer.loadStarts[0];
  EXPECT_EQ(start.load, site::FixedLoadId("cooler"));
  EXPECT_EQ(start.moment, 18.0 * hour);
  EXPECT_NEAR(start.start.peak.likely.in(ampere), 27.0, 3.0);  // five times 6 A, at the volts that this leaves
  ASSERT_FALSE(start.start.dips.empty());
  EXPECT_EQ(start.start.dips[0].hookup, site::HookupId("HM"));
  // 27 A at a power factor of 0.7 over 0.06 ohm of source and 0.2 ohm of 60 ft of 12 AWG there and back.
  EXPECT_NEAR((start.start.dips[0].dip.before - start.start.dips[0].dip.during.likely).in(units::volt), 5.0, 0.6);
  ASSERT_TRUE(start.start.trip.has_value());
  EXPECT_FALSE(start.start.trip->likely.has_value());
}

TEST(LoadStart, LeavesOutWhatDrawsNoMoreAsItStarts) {
  EXPECT_TRUE(assess(coolerBeside(6, 6, LoadClass::Resistance).site).loadStarts.empty());
}

TEST(LoadStart, LeavesOutCircuitsWithoutAMachine) {
  auto building = coolerBeside(6, 6);
  building.circuit("2", 20, 60);
  site::Hookup hookup = building.site.at<site::Hookup>(site::HookupId("HM"));
  hookup.socket = SmallSite::at("2");
  building.site.all<site::Hookup>().put(hookup);
  EXPECT_TRUE(assess(building.site).loadStarts.empty());
}

TEST(LoadStart, AFullCircuitTripsEarlyAsItStarts) {
  const Answer answer = assess(coolerBeside(19.5, 17).site);
  ASSERT_EQ(answer.loadStarts.size(), 1U);
  EXPECT_TRUE(answer.loadStarts[0].start.trip->earliest.has_value());
}

physics::StartMachine motor() {
  physics::StartMachine machine{};
  machine.plate.model = physics::LoadModel::Induction;
  machine.plate.voltage = 115.0 * units::volt;
  machine.plate.current = 14.0 * ampere;
  return machine;
}

double peakA(const physics::StartMachine& machine) {
  return std::abs(startPeakOf(machine)->law->at(115.0).admittanceS) * 115.0;
}

// Code letter L, 1.5 hp, 115 V: 9.0 to 9.99 kVA/hp, 117.4 to 130.3 A.
TEST(StartPeak, FollowsTheCodeLetterBeforeTheClass) {
  physics::StartMachine machine = motor();
  EXPECT_NEAR(peakA(machine), 6.5 * 14.0, 0.1);
  machine.plate.shaftPower = 1.5 * units::horsepower;
  machine.codeLetter = 'L';
  EXPECT_NEAR(peakA(machine), 0.5 * (117.4 + 130.3), 0.1);
  machine.codeLetter = '?';
  EXPECT_NEAR(peakA(machine), 6.5 * 14.0, 0.1);
  machine.codeLetter = 'L';
  machine.plate.lockedRotorCurrent = 70.0 * ampere;
  EXPECT_NEAR(peakA(machine), 70.0, 0.1);
}

}  // namespace
}  // namespace cordreach::study
