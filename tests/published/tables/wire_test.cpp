// SPDX-License-Identifier: GPL-3.0-or-later
// Wire geometry and resistance against values printed elsewhere. Beside each: where it is printed, and whether it was
// read there (seen) or recalled (memory).
#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "tables/conductor_metal.h"
#include "tables/dc_resistance.h"
#include "tables/iec_conductors.h"
#include "tables/table.h"
#include "units/wire_size.h"

namespace cordreach::tables {
namespace {

using units::foot;
using units::inch;
using units::ohm;
using units::squareMillimetre;
using units::WireSize;

const units::Area kCircularMil = 0.25 * 3.14159265358979323846 * (0.001 * inch) * (0.001 * inch);
const units::ResistancePerLength kOhmPerKft = ohm / (1000.0 * foot);

WireSize awg(int n) { return WireSize::awg(n); }
double cmil(int n) { return awg(n).area() / kCircularMil; }

// R(T)/R20 on the line through the zero of resistance.
double ratioTo20(Metal metal, double celsius) {
  const auto zero = conductorMetal(metal).zeroResistance.value;
  return (units::Temperature::fromCelsius(celsius) - zero) / (units::Temperature::fromCelsius(20.0) - zero);
}

units::ResistancePerLength solidAt(Metal metal, int n, double celsius) {
  return conductorMetal(metal).resistivity20.value / awg(n).area() * ratioTo20(metal, celsius);
}

// The lightest gauge with at least that area.
int gaugeFor(double circularMils) {
  int n = WireSize::kLightestAwg;
  while (cmil(n) < circularMils) --n;
  return n;
}

TEST(PublishedWireGeometry, MatchesATextbooksInchColumn) {
  // Lessons In Electric Circuits, wire table, inches (seen).
  for (const auto& [n, diameterIn] : std::vector<std::pair<int, double>>{{-3, 0.4600},
                                                                         {0, 0.3249},
                                                                         {6, 0.1620},
                                                                         {10, 0.1019},
                                                                         {12, 0.08081},
                                                                         {14, 0.06408},
                                                                         {18, 0.04030},
                                                                         {20, 0.03196}}) {
    EXPECT_NEAR(awg(n).solidDiameter().in(inch) / diameterIn, 1.0, 4e-4) << n;
  }
}

TEST(PublishedWireGeometry, StepsByTheRatioOfTheStandard) {
  // ASTM B258, ratio of adjacent gauges 1.122932 (seen, in texts that quote it).
  EXPECT_NEAR(awg(13).solidDiameter() / awg(14).solidDiameter(), 1.122932, 1e-6);
}

TEST(PublishedWireGeometry, MatchesTheCircularMilsOfTheCode) {
  // NEC Ch. 9 Table 8, rounded (seen).
  for (const auto& [n, printed] : std::vector<std::pair<int, double>>{{18, 1620},
                                                                      {16, 2580},
                                                                      {14, 4110},
                                                                      {12, 6530},
                                                                      {10, 10380},
                                                                      {8, 16510},
                                                                      {6, 26240},
                                                                      {4, 41740},
                                                                      {-3, 211600}}) {
    EXPECT_NEAR(cmil(n) / printed, 1.0, 3e-3) << n;
  }
  // Documented miss: the code prints 105 600 for 1/0, which is not the formula's 105 535 rounded to four figures.
  EXPECT_NEAR(std::round(cmil(0) / 100.0) * 100.0, 105500.0, 0.5);
}

TEST(PublishedWireResistance, SolidCopperAt75FollowsFromIacs) {
  // NEC Ch. 9 Table 8, solid uncoated copper: 14, 12, 10, 8 AWG seen, 18 and 16 memory. Half a per cent.
  for (const int n : {18, 16, 14, 12, 10, 8}) {
    const auto printed = dcResistance75(awg(n), Metal::Copper, Stranding::Solid);
    ASSERT_TRUE(printed);
    EXPECT_NEAR(solidAt(Metal::Copper, n, 75.0) / printed->value, 1.0, 0.005) << n;
  }
}

TEST(PublishedWireResistance, StrandedCopperAt75FollowsFromTheStrandingFactor) {
  // NEC Ch. 9 Table 8, stranded uncoated copper (seen from 16 AWG up, 18 memory). Half a per cent; 12 AWG, the
  // worst, is 0.501 % below its print of three figures.
  for (int n = -3; n <= 18; ++n) {
    const auto printed = dcResistance75(awg(n), Metal::Copper, Stranding::Stranded);
    if (!printed) continue;
    EXPECT_NEAR(solidAt(Metal::Copper, n, 75.0) * strandingFactor().value / printed->value, 1.0, 0.0051) << n;
  }
}

TEST(PublishedWireResistance, AluminiumAt75FollowsFromItsOwnLine) {
  // NEC Ch. 9 Table 8, stranded aluminium (seen but for 18 and 16). Half a per cent.
  for (int n = -3; n <= 18; ++n) {
    const auto printed = dcResistance75(awg(n), Metal::Aluminium, Stranding::Stranded);
    if (!printed) continue;
    EXPECT_NEAR(solidAt(Metal::Aluminium, n, 75.0) * strandingFactor().value / printed->value, 1.0, 0.005) << n;
  }
}

TEST(PublishedWireResistance, CoatingCostsThreeToSixPerCent) {
  // Stranded coated copper quoted from the 1996 NEC: 18, 16, 14 AWG 8.45, 5.29, 3.26 ohm per 1000 ft (seen).
  for (const auto& [n, printed] : std::vector<std::pair<int, double>>{{18, 8.45}, {16, 5.29}, {14, 3.26}}) {
    EXPECT_NEAR(dcResistance75(awg(n), Metal::Copper, Stranding::Stranded, Coating::Coated)->value / kOhmPerKft,
                printed, 1e-9);
    const double excess = printed * kOhmPerKft / (solidAt(Metal::Copper, n, 75.0) * strandingFactor().value);
    EXPECT_GT(excess, 1.03);
    EXPECT_LT(excess, 1.07);
  }
}

TEST(PublishedWireResistance, RisesWithTemperatureAsTheCodePrints) {
  // NEC Ch. 9 Table 8 note 2, alpha at 75 °C: copper 0.00323, aluminium 0.00330 (seen): the slope of our lines there.
  EXPECT_NEAR((ratioTo20(Metal::Copper, 76.0) / ratioTo20(Metal::Copper, 75.0)) - 1.0,
              conductorMetal(Metal::Copper).alpha75PerK.value, 5e-6);
  EXPECT_NEAR((ratioTo20(Metal::Aluminium, 76.0) / ratioTo20(Metal::Aluminium, 75.0)) - 1.0,
              conductorMetal(Metal::Aluminium).alpha75PerK.value, 5e-6);
}

TEST(PublishedWireResistance, GivesTheAircraftHandbooksHotLength) {
  // FAA AC 43.13-1B par. 11-66: L2 = 254.5 L1 / (234.5 + T2); 15.5 ft at 182 °C answers 9.5 ft (answer memory).
  EXPECT_NEAR(15.5 / ratioTo20(Metal::Copper, 182.0), 9.5, 0.05);
  // Documented miss: the same page prints 238.1 for aluminium (seen), 10 K off the constant that fits the code's table.
  EXPECT_NEAR(-238.1 - conductorMetal(Metal::Aluminium).zeroResistance.value.celsius(), -10.0, 1e-9);
}

TEST(PublishedWireResistance, WarmsAHomeworkCoilFromTwentyDegreesOn) {
  // Two physics homework solutions (seen) with 0.004041 for copper, ours 0.00393 of the standard's: 5 ohm at 20 °C are
  // 5.606 at 50 °C. 28.2 ohm at 24.5 °C are printed as 33.248 at 68.8 °C, which takes 24.5 °C for the coefficient's own
  // 20: a documented miss, 33.158 is right.
  EXPECT_NEAR(5.0 * ratioTo20(Metal::Copper, 50.0), 5.606, 0.004 * 5.606);
  const double warmOhm = 28.2 * ratioTo20(Metal::Copper, 68.8) / ratioTo20(Metal::Copper, 24.5);
  EXPECT_NEAR(warmOhm, 33.158, 0.005 * 33.158);
  EXPECT_GT(33.248 / warmOhm, 1.006);
}

TEST(PublishedWireResistance, GivesTheExamTextsConstantK) {
  // US licensing-exam study texts, K = 12.9 ohm cmil/ft for copper at 75 °C (seen).
  const auto k = conductorMetal(Metal::Copper).resistivity20.value * ratioTo20(Metal::Copper, 75.0) *
                 strandingFactor().value / kCircularMil;
  EXPECT_NEAR(k.in(ohm / foot), 12.9, 0.05);
  // ... and at 20 °C, solid, 10.371 (ASTM B193, memory).
  EXPECT_NEAR((conductorMetal(Metal::Copper).resistivity20.value / kCircularMil).in(ohm / foot), 10.371, 0.001);
  // Documented miss: textbooks that use pure copper print 10.09 (seen), 2.7 % below the standard's copper.
  EXPECT_NEAR(10.09 / 10.371, 0.973, 0.0005);
}

TEST(PublishedWireSizing, FindsTheGaugeForADrop) {
  // Lessons In Electric Circuits I ch. 12 (seen): 116 035 cmil are wanted, 2/0 is taken.
  EXPECT_EQ(gaugeFor(116035.0), -1);
  // Trade-journal article on NEC Table 9 (seen): 6207 cmil are wanted, 12 AWG is taken.
  EXPECT_EQ(gaugeFor(6207.0), 12);
}

TEST(PublishedWireSizing, GivesATextbooksLoop) {
  // Lessons In Electric Circuits I ch. 12 (seen): 14 AWG, 2300 ft, 10.09 ohm cmil/ft: 5.651 ohm a wire, 20.352 A at 230
  // V.
  const double wire = 10.09 * 2300.0 / cmil(14);
  EXPECT_NEAR(wire, 5.651, 0.002);
  EXPECT_NEAR(230.0 / (2.0 * wire), 20.352, 0.005);
}

TEST(PublishedWireSizing, GivesALessonsLowVoltageDrop) {
  // US electrician training lesson on NEC Table 8 (seen): 16 AWG stranded, 100 ft, 4 A: 4.0 V.
  const auto r = dcResistance75(awg(16), Metal::Copper, Stranding::Stranded)->value;
  EXPECT_NEAR((r * (200.0 * foot) * (4.0 * units::ampere)).in(units::volt), 4.0, 0.01);
  // US licensing-exam quiz (seen): 12 AWG, 100 ft, 20 A, K 12.9: 7.9 V.
  EXPECT_NEAR(12.9 * 2.0 * 20.0 * 100.0 / cmil(12), 7.9, 0.01);
}

TEST(PublishedWireSizing, KeepsToolManualsWithinTheirOwnRule) {
  // Portable-tool manuals (seen): least gauge for 5 V at 150 % of the rated amperes, here with solid copper at 20 °C.
  struct Cell {
    double amps, feet;
    int gauge;
  };
  const std::vector<Cell> cells{
      {2.0, 100, 18}, {2.0, 150, 16},  {3.4, 75, 18},  {3.4, 100, 16}, {3.4, 150, 14}, {5.0, 50, 18},  {5.0, 75, 16},
      {5.0, 100, 14}, {5.0, 150, 12},  {7.0, 25, 18},  {7.0, 50, 16},  {7.0, 75, 14},  {7.0, 100, 12}, {12.0, 50, 14},
      {12.0, 75, 12}, {12.0, 100, 10}, {16.0, 25, 14}, {16.0, 50, 12}, {16.0, 75, 10}, {20.0, 25, 12}, {20.0, 50, 10}};
  const auto dropV = [](const Cell& cell) {
    return (solidAt(Metal::Copper, cell.gauge, 20.0) * (2.0 * cell.feet * foot) * (1.5 * cell.amps * units::ampere))
        .in(units::volt);
  };
  for (const auto& cell : cells) EXPECT_LE(dropV(cell), 5.0) << cell.amps << " A " << cell.feet << " ft";
  // Documented miss: 18 AWG for 12 A over 25 ft, also printed, breaks the rule by 15 %.
  EXPECT_NEAR(dropV({12.0, 25, 18}), 5.75, 0.01);
}

TEST(PublishedMetricWire, AllowsALittleOverNominalCopper) {
  // IEC 60228 tables 3 and 2 (seen): greatest resistance over that of the nominal area at 17.241 ohm mm²/km.
  for (const double area : {0.5, 0.75, 1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0}) {
    const auto nominal = conductorMetal(Metal::Copper).resistivity20.value / (area * squareMillimetre);
    const auto size = WireSize::squareMillimetres(area);
    EXPECT_NEAR(iecResistance20(size, IecClass::Stranded2)->value / nominal, 1.06, 0.02) << area;
    EXPECT_NEAR(iecResistance20(size, IecClass::Flexible5)->value / nominal, 1.13, 0.04) << area;
  }
}

TEST(PublishedMetricWire, GivesTheBritishMillivolts) {
  // 2.5 mm² two-core, 18 mV per ampere and metre (UK table value, seen), by rho1 of IEC 60364-5-52 Annex G (seen).
  const double rho1 = table("code_limits").at("iec.rho1.copper").number("value");
  EXPECT_NEAR(1000.0 * 2.0 * rho1 / 2.5, 18.0, 1e-9);
  // Documented miss: rho1 is called 1.25 times the resistivity at 20 °C, but is 4 % more than that of IACS copper.
  const double iacs = conductorMetal(Metal::Copper).resistivity20.value.in(ohm * squareMillimetre / units::metre);
  EXPECT_NEAR(rho1 / (1.25 * iacs), 1.044, 0.001);
}

}  // namespace
}  // namespace cordreach::tables
