// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/load_nameplate.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/physics/load_test_support.h"

namespace cordreach::physics {
namespace {

constexpr LoadModel kAll[] = {LoadModel::Resistance,      LoadModel::Induction,           LoadModel::InductionFan,
                              LoadModel::Compressor,      LoadModel::Universal,           LoadModel::RectifiedDc,
                              LoadModel::ElectronicPlain, LoadModel::ElectronicCorrected, LoadModel::Microwave,
                              LoadModel::Copier};

TEST(Nameplate, DrawsItsAmpsAtItsVolts) {
  for (const LoadModel model : kAll) {
    for (const double voltageV : {115.0, 120.0, 230.0}) {
      EXPECT_NEAR(totalA(*lawOf(plateOf(model, voltageV, 12.0)), voltageV), 12.0, 1e-6) << tableKey(model);
    }
  }
}

TEST(Nameplate, RunsAtTheAmpsItIsKnownToRunAt) {
  for (const LoadModel model : kAll) {
    Nameplate plate = plateOf(model, 115.0, 15.0);
    plate.runningCurrent = 14.6 * units::ampere;
    EXPECT_NEAR(totalA(*lawOf(plate), 115.0), 14.6, 1e-5) << tableKey(model);
  }
}

TEST(Nameplate, LowVoltsRaiseLowerOrKeepTheAmpsByClass) {
  const auto change = [](LoadModel model) {
    const auto law = lawOf(plateOf(model, 120.0, 10.0));
    return totalA(*law, 108.0) / totalA(*law, 120.0) - 1.0;
  };
  EXPECT_NEAR(change(LoadModel::Induction), 0.11, 0.01);
  EXPECT_NEAR(change(LoadModel::RectifiedDc), 0.0, 1e-12);
  EXPECT_NEAR(change(LoadModel::Universal), -0.10, 0.01);
  EXPECT_NEAR(change(LoadModel::Resistance), -0.10, 1e-12);
  EXPECT_NEAR(change(LoadModel::ElectronicCorrected), 1.0 / 0.9 - 1.0, 1e-9);
  EXPECT_GT(change(LoadModel::ElectronicPlain), 0.06);
}

TEST(Nameplate, MoreDragRaisesAmpsOfMotorsOnly) {
  Nameplate dc = plateOf(LoadModel::RectifiedDc, 115.0, 15.0);
  dc.runningCurrent = 14.6 * units::ampere;
  dc.torqueFactor = 1.3;
  EXPECT_NEAR(totalA(*lawOf(dc), 112.0), 18.5, 0.1);
  Nameplate induction = plateOf(LoadModel::Induction, 115.0, 14.5);
  induction.torqueFactor = 1.3;
  EXPECT_GT(totalA(*lawOf(induction), 115.0), 17.0);
}

TEST(Nameplate, RefusesAbsurdPlatesWithACode) {
  const auto codeOf = [](auto change) {
    Nameplate plate = plateOf(LoadModel::Induction, 115.0, 15.0);
    change(plate);
    const auto law = makeLoadLaw(plate);
    return law.ok() ? std::string("accepted") : law.error().code;
  };
  EXPECT_EQ(codeOf([](Nameplate&) {}), "accepted");
  EXPECT_EQ(codeOf([](Nameplate& p) { p.voltage = 0.0 * units::volt; }), "load.voltage_out_of_range");
  EXPECT_EQ(codeOf([](Nameplate& p) { p.current = -3.0 * units::ampere; }), "load.current_out_of_range");
  EXPECT_EQ(codeOf([](Nameplate& p) { p.current = NAN * units::ampere; }), "load.current_out_of_range");
  EXPECT_EQ(codeOf([](Nameplate& p) { p.shaftPower = 0.0 * units::watt; }), "load.efficiency_out_of_range");
  EXPECT_EQ(codeOf([](Nameplate& p) { p.shaftPower = 8.0 * units::horsepower; }), "load.efficiency_out_of_range");
  EXPECT_EQ(codeOf([](Nameplate& p) { p.speedRpm = -1.0; }), "load.speed_out_of_range");
  EXPECT_EQ(codeOf([](Nameplate& p) { p.torqueFactor = NAN; }), "load.torque_out_of_range");
  EXPECT_EQ(codeOf([](Nameplate& p) { p.lockedRotorCurrent = 5.0 * units::ampere; }), "load.locked_rotor_out_of_range");
  EXPECT_EQ(codeOf([](Nameplate& p) { p.runningCurrent = 2.0 * units::ampere; }), "load.running_current_out_of_range");
  EXPECT_EQ(codeOf([](Nameplate& p) { p.runningCurrent = 60.0 * units::ampere; }), "load.running_current_out_of_range");
}

TEST(Nameplate, ShaftPowerThatCannotBeContinuousIsFittedByTheClassDefault) {
  Nameplate honest = plateOf(LoadModel::Induction, 115.0, 15.0);
  Nameplate boastful = honest;
  boastful.shaftPower = 3.0 * units::horsepower;
  EXPECT_FALSE(shaftPowerPlausible(boastful));
  EXPECT_DOUBLE_EQ(lawOf(boastful)->pullOutVoltageV(), lawOf(honest)->pullOutVoltageV());
  honest.shaftPower = 1.5 * units::horsepower;
  EXPECT_TRUE(shaftPowerPlausible(honest));
}

TEST(Nameplate, EveryPlausibleShaftPowerHasACircuit) {
  for (double share = 0.30; share <= 0.8001; share += 0.01) {
    Nameplate plate = plateOf(LoadModel::Induction, 115.0, 15.0);
    plate.shaftPower = std::min(share, 0.80) * 115.0 * 15.0 * units::watt;
    const auto law = makeLoadLaw(plate);
    ASSERT_TRUE(law.ok()) << share;
    EXPECT_NEAR(totalA(*law.value(), 115.0), 15.0, 1e-6) << share;
    EXPECT_GT(law.value()->pullOutVoltageV(), 60.0) << share;
    EXPECT_LT(law.value()->pullOutVoltageV(), 95.0) << share;
  }
}

TEST(Nameplate, ClassWordsAreTheConsoles) {
  EXPECT_EQ(loadClassFromWord("dc"), tables::LoadClass::RectifiedDc);
  EXPECT_EQ(loadClassFromWord("heat"), tables::LoadClass::Resistance);
  EXPECT_EQ(loadClassFromWord("induction"), tables::LoadClass::Induction);
  EXPECT_EQ(loadClassFromWord("universal"), tables::LoadClass::Universal);
  EXPECT_EQ(loadClassFromWord("electronic"), tables::LoadClass::Electronic);
  EXPECT_FALSE(loadClassFromWord("Induction").has_value());
}

TEST(Nameplate, SystemNominalOfA115VoltPlateIs120) {
  EXPECT_EQ(systemNominalV(115.0), 120.0);
  EXPECT_EQ(systemNominalV(120.0), 120.0);
  EXPECT_EQ(systemNominalV(230.0), 230.0);
}

}  // namespace
}  // namespace cordreach::physics
