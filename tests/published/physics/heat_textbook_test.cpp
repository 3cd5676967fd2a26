// SPDX-License-Identifier: GPL-3.0-or-later
// Heat: textbook cylinders, rods and wires. Each case names its source, and whether it was read or recalled.
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "physics/cord_convection.h"
#include "physics/cord_ladder.h"
#include "physics/wire_short_circuit.h"

namespace cordreach::physics {
namespace {

using std::numbers::pi;
using units::ampere;
using units::millimetre;

units::Temperature celsius(double value) { return units::Temperature::fromCelsius(value); }

// Three nodes so tightly coupled that they are one lump, cooled by a fixed coefficient.
CordLadder lump(double diameterM, double ohmPerM, double coefficient, double capacityJPerMK) {
  CordLadder ladder;
  ladder.capacityJPerMK = {capacityJPerMK / 3, capacityJPerMK / 3, capacityJPerMK / 3};
  ladder.resistance01 = ladder.resistance12 = 1e-5;
  ladder.ohmPerM20 = ohmPerM;
  ladder.surface.throughCover = 1.0 / (pi * diameterM * coefficient) * units::kelvinMetrePerWatt;
  return ladder;
}

double lossPerMetre(double coefficient, double diameterM, double riseK) { return coefficient * pi * diameterM * riseK; }

// Cengel, example 9-1 (seen in a student's solution): 80 mm pipe at 70 °C in 20 °C air, Nu 17.40, h 5.869, 443 W on 6
// m.
TEST(HorizontalPipe, HasThePublishedNusseltNumberAndLoss) {
  EXPECT_NEAR(nusseltChurchillChu(1.869e6, 0.7241), 17.40, 0.001 * 17.40);
  const auto diameter = 80.0 * millimetre;
  const double h = convectionWPerM2K(ConvectionLaw::ChurchillChu, diameter, celsius(70), celsius(20));
  EXPECT_NEAR(6.0 * lossPerMetre(h, 0.08, 50.0), 443.0, 0.015 * 443.0) << "with our own fits of air";
}

// Kreith, 7th edition, example 5.1 (seen in the book's companion script): 1 mm wire at 127 °C in 27 °C air, 12.07 W/m
// with a Nusselt number from a chart. Documented miss: Churchill and Chu lies 22 % below at such small Rayleigh
// numbers.
TEST(ThinHotWire, IsMetByMorganAndMissedByChurchillAndChu) {
  const double morgan = convectionWPerM2K(ConvectionLaw::Morgan, 1.0 * millimetre, celsius(127), celsius(27));
  EXPECT_NEAR(lossPerMetre(morgan, 1e-3, 100.0), 12.07, 0.05 * 12.07);
  const double cautious = convectionWPerM2K(ConvectionLaw::ChurchillChu, 1.0 * millimetre, celsius(127), celsius(27));
  EXPECT_NEAR(lossPerMetre(cautious, 1e-3, 100.0) / 12.07, 0.80, 0.02);
}

// Holman, example 7-5 (from memory): 0.02 mm wire at 54 °C in 0 °C air, 50 cm, 0.836 W.
TEST(HairWire, LosesThePublishedPowerByMorgan) {
  const double h = convectionWPerM2K(ConvectionLaw::Morgan, 0.02 * millimetre, celsius(54), celsius(0));
  EXPECT_NEAR(0.5 * lossPerMetre(h, 0.02e-3, 54.0), 0.836, 0.015 * 0.836);
}

// Incropera, problem 5.29 (problem seen, answer from memory): 1 mm wire in oil, 100 A, 0.01 ohm/m, h 500: 88.7 °C, and
// within 1 °C of it after 8.31 s.
TEST(WireInOil, SettlesAtThePublishedTemperatureAndTime) {
  const double capacity = 8000.0 * 500.0 * pi / 4.0 * 1e-6;
  const CordLadder wire = lump(1e-3, 0.01, 500.0, capacity);
  const auto end = steadyOf(wire, 100.0 * ampere, celsius(25));
  ASSERT_TRUE(end.has_value());
  EXPECT_NEAR(end->conductor.celsius(), 88.7, 0.05);
  LadderRun run(wire, celsius(25));
  const auto time = run.advanceUntil(100.0 * ampere, 60.0 * units::second, end->conductor - 1.0 * units::kelvin);
  ASSERT_TRUE(time.has_value());
  EXPECT_NEAR(time->si(), 8.31, 0.03);
}

// The same problem with 28 °C, 0.02 ohm/m, h 470 (seen): 163.45 °C. The published 25.1 s does not follow from the
// problem's own figures (it solves to 1e-5 K); 10.44 s does.
TEST(WireInOil, SettlesAtTheSecondPublishedTemperature) {
  const double capacity = 8000.0 * 500.0 * pi / 4.0 * 1e-6;
  const CordLadder wire = lump(1e-3, 0.02, 470.0, capacity);
  const auto end = steadyOf(wire, 100.0 * ampere, celsius(28));
  ASSERT_TRUE(end.has_value());
  EXPECT_NEAR(end->conductor.celsius(), 163.45, 0.02);
  LadderRun run(wire, celsius(28));
  const auto time = run.advanceUntil(100.0 * ampere, 60.0 * units::second, end->conductor - 1.0 * units::kelvin);
  ASSERT_TRUE(time.has_value());
  EXPECT_NEAR(time->si(), 10.44, 0.03);
}

// Incropera, chapter 3 (result seen, inputs partly from memory): 2 mm wire in 2 mm of rubber of 0.13 W/(m K), contact
// 3e-4 m2 K/W, h 10: 30 K at the wire carry off 4.479 W/m.
TEST(InsulatedWire, CarriesThePublishedPowerAtThirtyKelvin) {
  CordLadder wire = lump(6e-3, 1.0, 10.0, 1.0);
  wire.resistance01 = 3e-4 / (pi * 2e-3);
  wire.resistance12 = std::log(3.0) / (2.0 * pi * 0.13);
  const auto end = steadyOf(wire, std::sqrt(4.479) * ampere, celsius(20));
  ASSERT_TRUE(end.has_value());
  EXPECT_NEAR(end->conductor.celsius() - 20.0, 30.0, 0.01);
}

// Cengel, example 3-9 (from memory): 3 mm wire in 2 mm of plastic of 0.15 W/(m K), 80 W on 5 m, h 12, 30 °C: 105 °C
// where copper meets plastic.
TEST(PlasticCoveredWire, HasThePublishedInterfaceTemperature) {
  CordLadder wire = lump(7e-3, 1.0, 12.0, 1.0);
  wire.resistance12 = std::log(3.5 / 1.5) / (2.0 * pi * 0.15);
  const auto end = steadyOf(wire, 4.0 * ampere, celsius(30));
  ASSERT_TRUE(end.has_value());
  EXPECT_NEAR(end->conductor.celsius(), 105.0, 0.1);
}

// Incropera, chapter 1 (from memory): 1 mm rod of 0.4 ohm/m, h 100, emissivity 0.8, 27 °C: 5.2 A hold 60 °C.
TEST(BareRod, NeedsThePublishedCurrentForSixtyDegrees) {
  const double lossWPerM = lossPerMetre(100.0 + radiationWPerM2K(0.8, celsius(60), celsius(27)), 1e-3, 33.0);
  EXPECT_NEAR(std::sqrt(lossWPerM / 0.4), 5.2, 0.05);
}

// IEC 60364-4-43 and 60364-5-54 (from memory): k of copper 115, 143, 143, 141 A s^0.5/mm2.
TEST(AdiabaticFactor, IsThePublishedOneOfFourInsulations) {
  const auto k = [](double first, double last) {
    return adiabaticFactor(tables::Metal::Copper, celsius(first), celsius(last));
  };
  EXPECT_NEAR(k(70, 160), 115.0, 0.5);
  EXPECT_NEAR(k(30, 160), 143.0, 0.5);
  EXPECT_NEAR(k(90, 250), 143.0, 0.5);
  EXPECT_NEAR(k(60, 200), 141.0, 0.5);
}

// ICEA P-32-382 (from memory): 14 AWG from 75 to 150 °C in 5 s at 97.3 A; its constants differ from IEC's by 0.7 %.
TEST(AdiabaticTime, IsFiveSecondsAtTheCableMakersCurrent) {
  const auto time =
      adiabaticTime(units::WireSize::awg(14), tables::Metal::Copper, 97.3 * ampere, celsius(75), celsius(150));
  EXPECT_NEAR(std::sqrt(time.si() / 5.0), 1.0, 0.01);
}

}  // namespace
}  // namespace cordreach::physics
