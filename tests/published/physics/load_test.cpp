// SPDX-License-Identifier: GPL-3.0-or-later
// Loads against published values. Beside each: source and status (seen, memory, common, own, closed form).
#include <gtest/gtest.h>

#include <cmath>

#include "core/physics/load_test_support.h"
#include "physics/load_impedance.h"
#include "physics/load_rectified.h"
#include "physics/load_static.h"
#include "physics/pad_drag.h"
#include "tables/table.h"

namespace cordreach::physics {
namespace {

// 1440 W at 120 V behind 1 ohm: closed form for constant impedance, current and power.
TEST(PublishedLoad, ThreeKindsOfLoadBehindOneOhm) {
  StaticLoad load;
  load.activeW = 1440.0;
  const auto volts = [&](double exponent) {
    load.shape.exponentP = load.shape.exponentQ = exponent;
    return runningVoltageV(*makeStaticLaw(load), 120.0, 1.0);
  };
  EXPECT_NEAR(volts(2.0), 109.0909, 1e-4);
  EXPECT_NEAR(volts(1.0), 108.0000, 1e-4);
  EXPECT_NEAR(volts(0.0), 106.4758, 1e-4);
}

// IEEE Trans. Power Delivery 29(3), 2014, by way of an open file: numbers seen, row labels from memory.
TEST(PublishedLoad, EveryMeasuredRowSumsToOne) {
  const auto& rows = tables::table("zip_appliances").rows();
  EXPECT_GE(rows.size(), 18u);
  for (const auto& row : rows) {
    EXPECT_NEAR(row.number("zp") + row.number("ip") + row.number("pp"), 1.0, 0.005) << row.id();
    EXPECT_NEAR(row.number("zq") + row.number("iq") + row.number("pq"), 1.0, 0.005) << row.id();
  }
}

double measuredPower(const char* id, double share) {
  const auto law = makeStaticLaw(measuredAppliance(id).value());
  return inputW(*law, 120.0 * share) / inputW(*law, 120.0);
}

// The same rows at 90 % of volts: closed form from the seen coefficients.
TEST(PublishedLoad, MeasuredPowerAtNinetyPerCent) {
  EXPECT_NEAR(measuredPower("vacuum", 0.9), 0.814, 0.0006);
  EXPECT_NEAR(measuredPower("refrigerator", 0.9), 0.961, 0.0006);
  EXPECT_NEAR(measuredPower("copier", 0.9), 0.856, 0.0006);
  EXPECT_NEAR(measuredPower("microwave", 0.9), 0.932, 0.0006);
  EXPECT_NEAR(measuredPower("coffee", 0.9), 0.813, 0.0006);
  EXPECT_NEAR(measuredPower("fan", 0.9), 0.918, 0.0006);
}

// The same paper's rows: amps at 120 V and their change at 108 V (own arithmetic on seen coefficients).
TEST(PublishedLoad, MeasuredAmpsAndTheirChange) {
  constexpr struct {
    const char* id;
    double amps, change;
  } kRows[] = {{"vacuum", 7.36, .904},  {"fan", 1.53, 1.009},       {"refrigerator", 1.09, 1.033},
               {"minibar", 1.30, .935}, {"window_ac", 4.27, 1.054}, {"compressor1", 10.1, .916},
               {"heater", 7.62, .910},  {"coffee", 11.8, .904},     {"microwave", 12.0, 1.026},
               {"copier", 7.90, .952},  {"pc", 1.75, 1.063},        {"laptop", .67, 1.064},
               {"lcdtv", 1.74, 1.106},  {"projector", 2.14, 1.119}, {"eballast", .49, 1.123},
               {"incand", .73, .942},   {"cfl", .38, 1.032},        {"led", .06, .834}};
  for (const auto& row : kRows) {
    const auto law = makeStaticLaw(measuredAppliance(row.id).value());
    EXPECT_NEAR(totalA(*law, 120.0), row.amps, 0.006 * row.amps + 0.006) << row.id;
    EXPECT_NEAR(totalA(*law, 108.0) / totalA(*law, 120.0), row.change, 0.006) << row.id;
  }
}

// Power-system handbook exponents (memory) beside the measured slopes at 120 V (seen): a heater 2.0 and 1.87, an
// incandescent lamp 1.55 and 1.57. Documented misses: a refrigerator 0.77 against 0.51, the older handbook's machines
// being of another age.
TEST(PublishedLoad, HandbookExponentsAgainstMeasuredSlopes) {
  const auto slope = [](const char* id) { return measuredAppliance(id).value().shape.exponentP; };
  const auto handbook = [](const char* id) { return tables::table("load_exponents").at(id).number("exponent_p"); };
  EXPECT_NEAR(slope("heater"), handbook("resistance"), 0.14);
  EXPECT_NEAR(slope("incand"), handbook("incandescent"), 0.03);
  EXPECT_NEAR(slope("window_ac"), handbook("window_ac"), 0.05);
  EXPECT_GT(handbook("refrigerator") - slope("refrigerator"), 0.2);
}

// Class defaults (own) beside the measured row of that class (seen).
TEST(PublishedLoad, ClassDefaultsStayNearTheMeasuredRows) {
  const auto law = [](LoadModel model) { return lawOf(plateOf(model, 120.0, 10.0)); };
  const auto ratio = [](const LoadLaw& l) { return totalA(l, 108.0) / totalA(l, 120.0); };
  EXPECT_NEAR(ratio(*law(LoadModel::Universal)), 0.904, 0.01);
  EXPECT_NEAR(ratio(*law(LoadModel::Copier)), 0.952, 0.01);
  EXPECT_NEAR(ratio(*law(LoadModel::Microwave)), 1.026, 0.01);
  EXPECT_NEAR(ratio(*law(LoadModel::ElectronicPlain)), 1.063, 0.02);
  EXPECT_NEAR(ratio(*law(LoadModel::ElectronicCorrected)), 1.106, 0.01);
  EXPECT_NEAR(ratio(*law(LoadModel::Compressor)), 1.033, 0.025);
}

// A reference burnisher, mechanics closed form on our own friction, K and loss (own).
TEST(PublishedLoad, ReferenceBurnisherFromFrictionToAmps) {
  const units::Length pad = 10.0 * units::inch;
  const units::Torque torque = padTorque(0.40, 80.0 * units::newton, effectivePadRadius(pad));
  EXPECT_NEAR(torque.si(), 5.42, 0.005);
  EXPECT_NEAR(padPower(torque, 2000.0).in(units::horsepower), 1.52, 0.005);
  EXPECT_NEAR(burnisherAmps({}, torque).si(), 14.55, 0.02);
  EXPECT_NEAR(burnisherAmps({}, 1.3 * torque).si(), 18.48, 0.02);
  EXPECT_NEAR(padTorque(0.40, 80.0 * units::newton, cuppedPadRadius(pad)).si(), 6.98, 0.03);
  EXPECT_NEAR(padTorque(0.35, 60.0 * units::newton, effectivePadRadius(pad)).si(), 3.56, 0.01);
}

// Swing machines on the floor (own): torque and power at the pad.
TEST(PublishedLoad, SwingMachinesAtThePad) {
  const units::Length radius = effectivePadRadius(10.0 * units::inch);
  const auto horsepower = [&](double mu, double newtons, double rpm) {
    return padPower(padTorque(mu, newtons * units::newton, radius), rpm).in(units::horsepower);
  };
  EXPECT_NEAR(horsepower(0.30, 400.0, 175.0), 0.50, 0.005);
  EXPECT_NEAR(horsepower(0.45, 450.0, 175.0), 0.84, 0.005);
  EXPECT_NEAR(horsepower(0.60, 450.0, 175.0), 1.12, 0.005);
  EXPECT_NEAR(horsepower(0.35, 400.0, 300.0), 1.00, 0.005);
}

// The same burnisher's speed at 120 V 2000 rpm (own): at 108 V 1775 rpm at the same amps; behind 0.7 ohm 1809 rpm.
// Documented miss behind the cord: ours drops only the fundamental of the current and reads about 1826 rpm.
TEST(PublishedLoad, ReferenceBurnisherAtLowVolts) {
  const auto law = makeRectifiedLaw({120.0 * units::volt, 14.55 * units::ampere, 2000.0, 1.0});
  EXPECT_NEAR(law->at(108.0).speedRpm.value(), 1775.0, 3.0);
  EXPECT_NEAR(totalA(*law, 108.0), 14.55, 1e-9);
  const double voltageV = runningVoltageV(*law, 120.0, 0.7);
  EXPECT_NEAR(law->at(voltageV).speedRpm.value(), 1826.0, 5.0);
}

// Bridge mean 2√2/π = 0.9003 and the harmonics of a square wave: textbook identities, closed form.
TEST(PublishedLoad, BridgeWithSmoothCurrent) {
  EXPECT_NEAR(kBridgeMeanOfRms, 0.9003, 5e-5);
  const Distortion& square = modelDistortion(LoadModel::RectifiedDc);
  EXPECT_NEAR(square.fundamentalShare(), kBridgeMeanOfRms, 1e-7);
  EXPECT_NEAR(square.third, 1.0 / 3.0, 1e-7);
}

// A 15 A induction machine with its own 75 ft of 14 AWG on a 60 ft run of 12 AWG, 0.06 ohm of source (common practice,
// no source: a cord lighter than the machine's own pops breakers). With 100 ft of 16 AWG it runs while the copper is
// cold and pulls out once it is warm: the loop it can bear is 1.69 ohm. Pull-out at its terminals: 80.8 V.
double loopOhm(double extensionOhm, double extensionFactor) {
  return 0.06 + 120.0 * 1.588e-3 * 1.06 + 150.0 * 2.58e-3 * 1.10 + extensionOhm * extensionFactor;
}

TEST(PublishedLoad, InductionMachineOnALongThinCordHasNoRunningPointOnceWarm) {
  const auto law = lawOf(plateOf(LoadModel::Induction, 115.0, 15.0));
  EXPECT_NEAR(law->pullOutVoltageV(), 80.8, 0.1);
  const double thin = 200.0 * 4.10e-3;
  EXPECT_GT(runningVoltageV(*law, 120.0, loopOhm(thin, 1.00)), 85.0);
  EXPECT_GT(totalA(*law, runningVoltageV(*law, 120.0, loopOhm(thin, 1.00))), 18.5);
  EXPECT_EQ(runningVoltageV(*law, 120.0, loopOhm(thin, 1.30)), 0.0);
  const double heavy = 100.0 * 1.62e-3;
  EXPECT_GT(runningVoltageV(*law, 120.0, loopOhm(heavy, 1.15)), 103.5);
}

TEST(PublishedLoad, RectifiedMachineOnTheSameCordOnlySlows) {
  Nameplate plate = plateOf(LoadModel::RectifiedDc, 115.0, 15.0);
  plate.speedRpm = 2000.0;
  const auto law = lawOf(plate);
  const double voltageV = runningVoltageV(*law, 120.0, loopOhm(200.0 * 4.10e-3, 1.30));
  EXPECT_GT(voltageV, 90.0);
  EXPECT_NEAR(totalA(*law, voltageV), 15.0, 1e-9);
}

}  // namespace
}  // namespace cordreach::physics
