// SPDX-License-Identifier: GPL-3.0-or-later
// Conductor tables: which rows there are, and that what is not there has no value.
#include <gtest/gtest.h>

#include "base/contract.h"
#include "tables/ambient_factor.h"
#include "tables/conductor_metal.h"
#include "tables/cord_ampacity.h"
#include "tables/dc_resistance.h"
#include "tables/iec_conductors.h"
#include "tables/table.h"
#include "tables/wire_ampacity.h"

namespace cordreach::tables {
namespace {

using units::ampere;
using units::Temperature;
using units::WireSize;

WireSize awg(int n) { return WireSize::awg(n); }
WireSize mm2(double area) { return WireSize::squareMillimetres(area); }
Temperature celsius(double value) { return Temperature::fromCelsius(value); }

TEST(ConductorMetal, CarriesASourceWithEachConstant) {
  for (const Metal metal : {Metal::Copper, Metal::Aluminium}) {
    const auto& data = conductorMetal(metal);
    EXPECT_FALSE(data.resistivity20.source().text.empty());
    // alpha20 and the zero of resistance are one line: 1/alpha20 = 20 °C - zero, to the digits printed.
    EXPECT_NEAR(1.0 / data.alpha20PerK.value, (celsius(20.0) - data.zeroResistance.value).in(units::kelvin), 0.1);
  }
}

TEST(DcResistance, HasARowForEachPrintedSizeAndNoOther) {
  for (int n = -3; n <= 18; ++n) {
    const bool printed = n <= 4 || n % 2 == 0;
    EXPECT_EQ(dcResistance75(awg(n), Metal::Copper, Stranding::Stranded).has_value(), printed) << n;
    EXPECT_EQ(dcResistance75(awg(n), Metal::Copper, Stranding::Solid).has_value(), n >= 8 && n % 2 == 0) << n;
  }
  EXPECT_FALSE(dcResistance75(awg(20), Metal::Copper, Stranding::Stranded));
  EXPECT_FALSE(dcResistance75(mm2(2.5), Metal::Copper, Stranding::Stranded));
  EXPECT_FALSE(dcResistance75(awg(14), Metal::Aluminium, Stranding::Solid, Coating::Coated));
}

TEST(AcImpedance, StandsInForCordsWithTheNearestPrintedSize) {
  EXPECT_EQ(cordReactance60Hz(awg(12)).value, reactance60Hz(awg(12), Conduit::Pvc)->value);
  EXPECT_EQ(cordReactance60Hz(awg(18)).value, reactance60Hz(awg(14), Conduit::Pvc)->value);
  EXPECT_EQ(cordReactance60Hz(mm2(2.5)).value, reactance60Hz(awg(14), Conduit::Pvc)->value);
  EXPECT_EQ(cordReactance60Hz(mm2(4.0)).value, reactance60Hz(awg(12), Conduit::Pvc)->value);
  EXPECT_EQ(cordReactance60Hz(awg(-3)).value, reactance60Hz(awg(-3), Conduit::Pvc)->value);
  EXPECT_GT(reactance60Hz(awg(12), Conduit::Steel)->value, reactance60Hz(awg(12), Conduit::Pvc)->value);
  EXPECT_FALSE(acResistance75(awg(16), Conduit::Pvc));
}

TEST(CordAmpacity, RisesWithCopperInEveryColumn) {
  for (const CordColumn column : {CordColumn::ThreeCarrying, CordColumn::TwoCarrying, CordColumn::Heater}) {
    units::Current before{};
    for (int n = 18; n >= 4; --n) {
      const auto current = cordAmpacity(awg(n), column);
      if (!current) continue;
      EXPECT_GE(current->value, before) << n;
      before = current->value;
    }
    EXPECT_GT(before, 30.0 * ampere);
  }
  for (int n = 4; n <= 18; ++n) {
    EXPECT_LT(cordAmpacity(awg(n), CordColumn::ThreeCarrying)->value,
              cordAmpacity(awg(n), CordColumn::TwoCarrying)->value);
  }
  EXPECT_FALSE(cordAmpacity(awg(3), CordColumn::TwoCarrying));
  EXPECT_FALSE(cordAmpacity(mm2(1.5), CordColumn::TwoCarrying));
}

TEST(CordBundling, CoversEveryCountFromFour) {
  EXPECT_FALSE(cordBundlingFactor(3));
  double before = 1.0;
  for (int n = 4; n <= 100; ++n) {
    const auto factor = cordBundlingFactor(n);
    ASSERT_TRUE(factor) << n;
    EXPECT_LE(factor->value, before);
    before = factor->value;
  }
  EXPECT_DOUBLE_EQ(before, 0.35);
}

TEST(AmbientFactor, ChangesAtTheBandsOfTheTable) {
  EXPECT_DOUBLE_EQ(ambientFactor(celsius(60), celsius(30))->value, 1.0);
  EXPECT_DOUBLE_EQ(ambientFactor(celsius(60), celsius(30.01))->value, 0.91);
  EXPECT_DOUBLE_EQ(ambientFactor(celsius(60), celsius(25))->value, 1.08);
  EXPECT_DOUBLE_EQ(ambientFactor(celsius(60), celsius(-40))->value, 1.29);
  EXPECT_DOUBLE_EQ(ambientFactor(celsius(75), celsius(70))->value, 0.33);
  EXPECT_FALSE(ambientFactor(celsius(60), celsius(56)));
  EXPECT_FALSE(ambientFactor(celsius(90), celsius(85.1)));
}

TEST(AmbientFactor, TakesTheColumnNotAboveTheRating) {
  EXPECT_EQ(ambientFactor(celsius(105), celsius(40))->value, ambientFactor(celsius(90), celsius(40))->value);
  EXPECT_EQ(ambientFactor(celsius(70), celsius(40))->value, ambientFactor(celsius(60), celsius(40))->value);
  EXPECT_FALSE(ambientFactor(celsius(59), celsius(20)));
}

TEST(AmbientFactor, EndsAtTheRating) {
  EXPECT_EQ(ambientFactorByLaw(celsius(60), celsius(60)), 0.0);
  EXPECT_EQ(ambientFactorByLaw(celsius(60), celsius(80)), 0.0);
  EXPECT_THROW(static_cast<void>(ambientFactorByLaw(celsius(30), celsius(20))), base::ContractFailure);
}

TEST(WireAmpacity, RisesWithInsulationAndCopper) {
  for (const Metal metal : {Metal::Copper, Metal::Aluminium}) {
    for (int n = 0; n <= 12; ++n) {
      const auto cool = wireAmpacity(awg(n), WireColumn::C60, metal);
      if (!cool) continue;
      EXPECT_LT(cool->value, wireAmpacity(awg(n), WireColumn::C75, metal)->value) << n;
      EXPECT_LT(wireAmpacity(awg(n), WireColumn::C75, metal)->value,
                wireAmpacity(awg(n), WireColumn::C90, metal)->value);
      EXPECT_LE(wireAmpacity(awg(n), WireColumn::C60, Metal::Aluminium)->value,
                wireAmpacity(awg(n), WireColumn::C60)->value);
    }
  }
  EXPECT_FALSE(wireAmpacity(awg(14), WireColumn::C60, Metal::Aluminium));
  EXPECT_FALSE(wireAmpacity(awg(13), WireColumn::C60));
}

TEST(LargestDevice, KnowsSmallWireOnly) {
  EXPECT_EQ(largestDevice(awg(14))->value, 15.0 * ampere);
  EXPECT_EQ(largestDevice(awg(12), Metal::Aluminium)->value, 15.0 * ampere);
  EXPECT_FALSE(largestDevice(awg(8)));
  EXPECT_FALSE(largestDevice(awg(14), Metal::Aluminium));
}

TEST(IecConductors, TakesTheLowerOfTwoCordSeries) {
  EXPECT_EQ(iecCordAmpacity(mm2(2.5))->value, 20.0 * ampere);
  EXPECT_EQ(iecCordAmpacity(mm2(1.25))->value, 13.0 * ampere);
  EXPECT_EQ(iecCordAmpacity(mm2(4.0))->value, 32.0 * ampere);  // one series only
  EXPECT_FALSE(iecCordAmpacity(awg(14)));
  EXPECT_FALSE(iecAmpacity(mm2(0.75), IecLoaded::Two, IecMethod::B2InConduit));
}

TEST(IecConductors, FlexibleAndTinnedResistMore) {
  for (const double area : {0.5, 0.75, 1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0}) {
    const auto stranded = iecResistance20(mm2(area), IecClass::Stranded2)->value;
    EXPECT_LT(stranded, iecResistance20(mm2(area), IecClass::Flexible5)->value) << area;
    EXPECT_LT(stranded, iecResistance20(mm2(area), IecClass::Stranded2, true)->value) << area;
  }
  EXPECT_FALSE(iecResistance20(mm2(3.0), IecClass::Flexible5));
}

// Every cell that an accessor turns into a number holds one, whether or not another test asks for it.
TEST(NumberColumns, HoldNumbersThroughout) {
  const std::vector<std::pair<const char*, std::vector<const char*>>> columns{
      {"conductor_metals", {"value"}},
      {"dc_resistance", {"ohm_per_kft_75c"}},
      {"ac_impedance", {"ohm_per_kft_75c"}},
      {"iec_resistance", {"ohm_per_km_20c"}},
      {"iec_ampacity", {"ampacity_a"}},
      {"cord_ampacity", {"ampacity_a"}},
      {"wire_ampacity", {"ampacity_a"}},
      {"wire_protection", {"maximum_a"}},
      {"cord_construction", {"value"}},
      {"code_limits", {"value"}},
      {"cord_bundling", {"from_conductors", "factor"}},
      {"ambient_factor", {"rating_c", "ambient_to_c", "factor"}},
      {"cord_types", {"rating_c", "voltage_v"}},
      {"receptacles", {"rating_a", "voltage_v", "hot_poles"}}};
  for (const auto& [name, names] : columns) {
    for (const Row& row : table(name).rows()) {
      for (const char* column : names)
        EXPECT_NO_THROW(static_cast<void>(row.number(column))) << name << " " << row.id();
    }
  }
}

}  // namespace
}  // namespace cordreach::tables
