// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/load_static.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/physics/load_test_support.h"
#include "physics/load_impedance.h"
#include "tables/table.h"

namespace cordreach::physics {
namespace {

TEST(StaticLaw, OutsideItsRangeHoldsThePowerFactorAndGoesOnByItsExponent) {
  const auto law = lawOf(plateOf(LoadModel::Compressor, 120.0, 8.0));
  const auto ratio = [&](double v) { return law->at(v).admittanceS.imag() / law->at(v).admittanceS.real(); };
  EXPECT_NEAR(ratio(95.0), ratio(100.0), 1e-12);
  EXPECT_NEAR(ratio(140.0), ratio(132.0), 1e-12);
  EXPECT_GT(std::abs(ratio(110.0) - ratio(100.0)), 0.01);
  EXPECT_NEAR(inputW(*law, 95.0) / inputW(*law, 100.0), std::pow(0.95, 0.5), 1e-12);
}

TEST(StaticLaw, ConstantPowerBecomesConstantCurrentBelowThreeQuarters) {
  const auto law = lawOf(plateOf(LoadModel::ElectronicCorrected, 120.0, 5.0));
  EXPECT_NEAR(inputW(*law, 95.0), inputW(*law, 120.0), 1e-9);
  EXPECT_NEAR(totalA(*law, 70.0), totalA(*law, 90.0), 1e-9);
}

TEST(StaticLaw, BelowHalfOfNominalIsTheImpedanceItHasThere) {
  const auto law = lawOf(plateOf(LoadModel::ElectronicPlain, 120.0, 5.0));
  EXPECT_EQ(law->at(30.0).admittanceS, law->at(0.0).admittanceS);
  EXPECT_NEAR(totalA(*law, 30.0), 0.5 * totalA(*law, 60.0), 1e-9);
  EXPECT_EQ(totalA(*law, 0.0), 0.0);
}

TEST(StaticLaw, LimitsGoWithTheSystemsNominal) {
  const auto law = lawOf(plateOf(LoadModel::ElectronicCorrected, 230.0, 5.0));
  EXPECT_NEAR(inputW(*law, 180.0), inputW(*law, 230.0), 1e-9);
  EXPECT_NEAR(totalA(*law, 130.0), totalA(*law, 172.5), 1e-9);
}

TEST(Appliance, DrawsTheAmpsItIsGivenAtTheVoltsItIsGiven) {
  for (const auto& row : tables::table("zip_appliances").rows()) {
    const auto law = makeApplianceLaw(row.id(), 115.0 * units::volt, 6.0 * units::ampere);
    ASSERT_TRUE(law.ok());
    EXPECT_NEAR(totalA(*law.value(), 115.0), 6.0, 1e-9) << row.id();
  }
  const auto unknown = makeApplianceLaw("teleporter", 115.0 * units::volt, 6.0 * units::ampere);
  ASSERT_FALSE(unknown.ok());
  EXPECT_EQ(unknown.error().code, "load.unknown_appliance");
}

TEST(Appliance, DoesNotFollowItsPolynomialIntoNonsense) {
  // At 84 V the microwave row's own reactive polynomial would give 3.5 times what it draws at 120 V.
  const auto law = makeApplianceLaw("microwave", 120.0 * units::volt, 12.0 * units::ampere).value();
  const auto reactive = [&](double v) { return -law->at(v).admittanceS.imag() * v * v; };
  EXPECT_LT(reactive(84.0), 1.3 * reactive(120.0));
}

TEST(Distortion, AddsInQuadratureToThePlatesAmps) {
  const auto law = lawOf(plateOf(LoadModel::ElectronicPlain, 120.0, 10.0));
  const LoadPoint point = law->at(120.0);
  EXPECT_NEAR(std::abs(point.admittanceS) * 120.0, 6.0, 1e-6);
  EXPECT_NEAR(point.distortionA, 8.0, 1e-6);
  EXPECT_NEAR(point.thirdHarmonicA, 0.85 * 6.0, 1e-6);
}

TEST(Distortion, ThirdIsNeverMoreThanTheWhole) {
  for (const auto& row : tables::table("load_distortion").rows()) {
    EXPECT_LE(row.number("third_of_fundamental"), row.number("distortion_of_fundamental")) << row.id();
  }
}

TEST(Heater, IsItsImpedanceAtAnyVolts) {
  const auto law = makeHeaterLaw(120.0 * units::volt, 12.5 * units::ampere);
  EXPECT_DOUBLE_EQ(inputW(*law, 120.0), 1500.0);
  EXPECT_DOUBLE_EQ(inputW(*law, 60.0), 375.0);
}

TEST(LoadTypes, EachMakesALawOfItsModel) {
  for (const auto& row : tables::table("load_types").rows()) {
    EXPECT_NE(tables::table("load_class").find(row.text("model")), nullptr) << row.id();
    EXPECT_NE(tables::table("start_class").find(row.text("start_class")), nullptr) << row.id();
    EXPECT_LE(row.number("typical_a"), row.number("label_a")) << row.id();
    EXPECT_LE(row.number("duty_low"), row.number("duty_high")) << row.id();
    EXPECT_LE(row.number("duty_high"), 1.0) << row.id();
  }
}

}  // namespace
}  // namespace cordreach::physics
