// SPDX-License-Identifier: GPL-3.0-or-later
// Faults: the table of currents at a cord's end, times to the short-circuit limit, and the constants of the standards.
#include <array>
#include <cmath>
#include <optional>

#include <gtest/gtest.h>

#include "physics/fault_clearing.h"
#include "physics/fault_heat.h"
#include "physics/fault_loop.h"
#include "physics/ground_fault.h"
#include "physics/touch_limits.h"
#include "physics/touch_voltage.h"
#include "physics/wire_short_circuit.h"
#include "physics/wire_short_circuit_slow.h"

namespace cordreach::physics {
namespace {

using units::ampere;
using units::metre;
using units::second;
using units::volt;
using units::WireSize;

units::Temperature celsius(double value) { return units::Temperature::fromCelsius(value); }

// 25 kVA, 2 %, 240 V: 5.2 kA between lines, about one and a half times that from line to neutral at the terminals
// (from memory); resistance and reactance alike (own).
FaultLoop transformer() {
  const double ohm = 120.0 / (1.5 * 25000.0 / 240.0 / 0.02);
  const double part = ohm / std::sqrt(2.0) / 2.0;
  return {{part, part}, {part, part}};
}

units::Current endOfCord(int gauge, double lengthM, units::Temperature at, bool hot) {
  FaultLoop loop = transformer() +
                   conductorLoop(WireSize::awg(12), tables::Metal::Copper, WireUse::Building, 20.0 * metre, at) +
                   conductorLoop(WireSize::awg(gauge), tables::Metal::Copper, WireUse::Cord, lengthM * metre, at);
  if (hot) loop = loop + jointsLoop();
  return boltedCurrent(120.0 * volt, loop, hot ? leastVoltageFactor() : 1.0);
}

struct Ends {
  double lengthM;
  std::array<double, 4> coldA;  // 18, 16, 14, 12 AWG
  std::array<double, 4> hotA;
};

// Computed from NEC Chapter 9 Table 8: 120 V, 25 kVA, 20 m of 12 AWG; cold 20 °C, hot 60 °C with 0.95 of the volts and
// 40 mohm of joints. Ours lie within 0.9 %: our stranded resistances are up to half a per cent lower.
TEST(EndOfCord, CurrentsAreTheComputedTable) {
  const std::array<int, 4> gauges = {18, 16, 14, 12};
  const Ends rows[] = {{7.6, {218, 280, 341, 394}, {169, 214, 256, 292}},
                       {15.2, {137, 190, 250, 311}, {108, 148, 192, 235}},
                       {30.5, {78, 115, 162, 218}, {63, 91, 127, 169}},
                       {45.7, {55, 83, 120, 169}, {44, 66, 96, 132}},
                       {61.0, {42, 64, 95, 137}, {34, 52, 76, 108}}};
  for (const Ends& row : rows) {
    for (std::size_t i = 0; i < gauges.size(); ++i) {
      const double rounding = 0.5;
      const units::Current cold = endOfCord(gauges[i], row.lengthM, celsius(20), false);
      const units::Current hot = endOfCord(gauges[i], row.lengthM, hotLoop(), true);
      EXPECT_NEAR(cold.si(), row.coldA[i], rounding + 0.009 * row.coldA[i]) << gauges[i] << " at " << row.lengthM;
      EXPECT_NEAR(hot.si(), row.hotA[i], rounding + 0.009 * row.hotA[i]) << gauges[i] << " at " << row.lengthM;
    }
  }
}

// 15 to 50 kVA moves it by less than 5 % behind 20 m of 12 AWG (computed).
TEST(EndOfCord, ASourceOfAnotherSizeMattersLittle) {
  const auto with = [](double kilovoltAmperes) {
    const double part = 120.0 / (1.5 * kilovoltAmperes * 1000.0 / 240.0 / 0.02) / std::sqrt(2.0) / 2.0;
    const FaultLoop source{{part, part}, {part, part}};
    return boltedCurrent(
        120.0 * volt,
        source + conductorLoop(WireSize::awg(12), tables::Metal::Copper, WireUse::Building, 20.0 * metre, celsius(20)) +
            conductorLoop(WireSize::awg(16), tables::Metal::Copper, WireUse::Cord, 15.2 * metre, celsius(20)));
  };
  EXPECT_LT(with(50) / with(15), 1.05);
  EXPECT_GT(with(50), with(15));
}

FaultHeat atConstant(int gauge, double amperes, units::Temperature from) {
  const CordSection section{WireSize::awg(gauge), 3, tables::CordFamily::Hard, tables::Laying::Straight};
  const FaultCord cord(section, Corner::Likely, {from, from}, celsius(25));
  constexpr double kStiffOhm = 1e6;
  return faultHeat(cord, {amperes * kStiffOhm * volt, kStiffOhm, 0.0, 0.0}, faultHorizon());
}

struct Race {
  int gauge;
  double amperes;
  double damageS, likelyS, latestS;
};

// Computed with a three-node ladder and the replica's closed form: conductor from 45 to 160 °C against a cold 20 A
// breaker's thermal part; 99.9 A stands for 100, where the earliest may already act at once. Ours come out within 12 %
// of these times, the band of such a ladder; who wins is the same.
TEST(TimeToShortCircuitLimit, IsTheComputedTableAndSoIsWhoWins) {
  const OvercurrentDevice twenty{{20.0 * ampere}, BreakerAir::all(celsius(25)), {}};
  const Race rows[] = {{18, 80, 5.7, 9.1, 23.9},
                       {16, 99.9, 8.4, 5.7, 14.9},
                       {16, 80, 17, 9.1, 23.9},
                       {14, 99.9, 25, 5.7, 14.9},
                       {12, 99.9, 82, 5.7, 14.9}};
  for (const Race& row : rows) {
    const FaultHeat heat = atConstant(row.gauge, row.amperes, celsius(45));
    const auto damage = timeToPass(heat, conductorShortCircuit().value);
    const auto likely = clearingTime(twenty, TripCurve::Likely, heat);
    const auto latest = clearingTime(twenty, TripCurve::Latest, heat);
    ASSERT_TRUE(damage && likely && latest) << row.gauge;
    EXPECT_NEAR(damage->si(), row.damageS, 0.12 * row.damageS) << row.gauge << " AWG at " << row.amperes;
    EXPECT_NEAR(likely->si(), row.likelyS, 0.06) << row.gauge;
    EXPECT_NEAR(latest->si(), row.latestS, 0.08) << row.gauge;
    EXPECT_EQ(*likely < *damage, row.likelyS < row.damageS) << row.gauge;
    EXPECT_EQ(*latest < *damage, row.latestS < row.damageS) << row.gauge;
  }
}

// UL 943 (seen, three texts): 6 mA 5.59 s; 264 mA 0.025 s.
TEST(Ul943, CurveEndsAreThePublishedOnes) {
  EXPECT_NEAR(groundFaultTripTime(6.0 * units::milliampere)->si(), 5.59, 0.005);
  EXPECT_NEAR(groundFaultTripTime(264.0 * units::milliampere)->si(), 0.025, 0.0005);
  EXPECT_EQ(longestShockBehindDevice(), *groundFaultTripTime(6.0 * units::milliampere));
}

// IEC 60364-5-54 (from memory): 115 for PVC from 70 to 160 °C, 143 from 30 and for XLPE from 90 to 250, 141 for rubber
// from 60 to 200.
TEST(Iec60364, FactorsAreThePublishedOnes) {
  const auto k = [](double first, double last) {
    return adiabaticFactor(tables::Metal::Copper, celsius(first), celsius(last));
  };
  EXPECT_NEAR(k(70, 160), 115.0, 0.5);
  EXPECT_NEAR(k(30, 160), 143.0, 0.5);
  EXPECT_NEAR(k(90, 250), 143.0, 0.5);
  EXPECT_NEAR(k(60, 200), 141.0, 0.5);
}

// ICEA P-32-382 (from memory): an ampere for every 42.25 circular mil for 5 s, from 75 to 150 °C; 97.3 A at 14 AWG,
// whose 4107 circular mil the tables round to 4110.
TEST(Icea, OneAmpereForEveryFortyTwoCircularMil) {
  const units::Current stood = iceaCurrent(WireSize::awg(14), 5.0 * second, celsius(75), celsius(150));
  EXPECT_NEAR(stood.si(), 97.31 * 4107.0 / 4110.0, 0.01);
  EXPECT_NEAR(stood.si(), 4107.0 / 42.25, 0.0005 * 97.28);
}

// The same equation and the adiabatic factor are two roads to one figure.
TEST(Icea, AgreesWithTheAdiabaticFactor) {
  const double k = adiabaticFactor(tables::Metal::Copper, celsius(75), celsius(150));
  const units::Current stood = iceaCurrent(WireSize::awg(12), 1.0 * second, celsius(75), celsius(150));
  EXPECT_NEAR(stood.si() / (k * WireSize::awg(12).area().in(units::squareMillimetre)), 1.0, 0.01);
}

// IEC 60949 (from memory) for 1.31 mm² in PVC: 1.30, 1.80, 2.26 at 1, 5, 10 s.
TEST(Iec60949, SlowFactorOfSixteenGauge) {
  const auto factor = [](double seconds) {
    return slowFactor(WireSize::awg(16), ConductorCover::Pvc, seconds * second);
  };
  EXPECT_NEAR(factor(1), 1.30, 0.005);
  EXPECT_NEAR(factor(5), 1.80, 0.01);
  EXPECT_NEAR(factor(10), 2.26, 0.01);
}

// The ladder lets a cord stand more than IEC 60949, and that more than the adiabatic equation, as a two-dimensional
// solution does (computed: 1.57, 2.4, 3.1 times the adiabatic time at 1, 5, 10 s).
TEST(Iec60949, LiesBetweenTheAdiabaticTimeAndTheLadder) {
  for (const double amperes : {100.0, 140.0, 180.0}) {
    const auto ladder = timeToPass(atConstant(16, amperes, celsius(45)), celsius(160));
    const auto slow = slowTime(WireSize::awg(16), ConductorCover::Pvc, amperes * ampere, celsius(45), celsius(160));
    const auto adiabatic =
        adiabaticTime(WireSize::awg(16), tables::Metal::Copper, amperes * ampere, celsius(45), celsius(160));
    ASSERT_TRUE(ladder.has_value());
    EXPECT_LT(adiabatic, slow);
    EXPECT_LT(slow, *ladder) << amperes;
    EXPECT_NEAR(slow / adiabatic, slowFactor(WireSize::awg(16), ConductorCover::Pvc, slow), 1e-9);
  }
}

// IEC 60364-4-41 (from memory): equal conductors out and back leave half the volts on the frame; 0.8, 0.4, 0.2 s.
TEST(Iec60364, TouchVoltsAndDisconnectionTimes) {
  EXPECT_NEAR(touchVoltage(120.0 * volt, {0.3, 0.3}).si(), 60.0, 1e-9);
  EXPECT_NEAR(touchVoltage(120.0 * volt, {0.31, 0.30}).si(), 59.0, 0.05);
  EXPECT_EQ(disconnectionTime(120.0 * volt), 0.8 * second);
  EXPECT_EQ(disconnectionTime(230.0 * volt), 0.4 * second);
  EXPECT_EQ(disconnectionTime(400.0 * volt), 0.2 * second);
  // B16 at 230 V: 2.73 ohm hot with 0.95, 1.92 ohm as measured cold.
  EXPECT_NEAR(largestLoop(230.0 * volt, 80.0 * ampere).si(), 2.731, 0.001);
  EXPECT_NEAR(largestLoopMeasuredCold(230.0 * volt, 80.0 * ampere).si(), 1.917, 0.001);
}

}  // namespace
}  // namespace cordreach::physics
