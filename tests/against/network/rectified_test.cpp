// SPDX-License-Identifier: GPL-3.0-or-later
// Rectified loads as circuits of diodes in an ngspice transient, against our fundamental-and-harmonics view of them:
// total rms, drop, speed, and what third harmonics do to a shared neutral. Tolerances are what the simpler view costs:
// it leaves out that the current lags (its drop adds up arithmetically) and that a long wire rounds the pulses off.
#include <gtest/gtest.h>

#include <numbers>

#include "against/network/spice_waves.h"
#include "network/solve.h"
#include "network/wiring_system.h"
#include "physics/load_nameplate.h"
#include "support/network_builder.h"

namespace cordreach {
namespace {

using testing::SpiceWave;

constexpr double kSourceV = 120.0;
const std::string kDiode = ".model DD D(IS=1e-7 N=1.8 RS=0.01 CJO=1n)\n";

std::string say(double value) {
  char text[40];
  std::snprintf(text, sizeof text, "%.10g", value);
  return text;
}

// A bridge from a to b with its dc side between p and n; k tells several apart.
std::string bridge(const std::string& k) {
  return "D1" + k + " a" + k + " p" + k + " DD\nD2" + k + " b p" + k + " DD\nD3" + k + " n" + k + " a" + k + " DD\nD4" +
         k + " n" + k + " b DD\nRG" + k + " n" + k + " 0 1meg\nRX" + k + " a" + k + " b 10k\nCX" + k + " a" + k +
         " b 2n\n";
}

std::string source(const std::string& k, double poleOhm, double phaseDeg) {
  return "VS" + k + " s" + k + " 0 SIN(0 " + say(kSourceV * std::numbers::sqrt2) + " 60 0 0 " + say(phaseDeg) +
         ")\nRP" + k + " s" + k + " x" + k + " " + say(poleOhm) + "\n";
}

network::Solution solved(std::vector<network::Phasor> sourceV, double poleOhm,
                         const std::shared_ptr<const physics::LoadLaw>& law) {
  std::vector<std::size_t> phases;
  for (std::size_t i = 0; i < sourceV.size(); ++i) phases.push_back(i);
  network::Circuit circuit = testing::chain(phases, {{poleOhm, poleOhm}});
  for (const std::size_t pole : phases) testing::addLoad(circuit, 0, law, pole);
  return solve(testing::oneCircuit(std::move(sourceV), std::move(circuit)));
}

// The reference burnisher: K 0.459 V·s/rad, Ra 0.6 ohm, 6.02 N·m with its losses; 10 mH smooth its current to a form
// factor of about 1.1. Its inertia, as a capacitance J/K², is made small: only the settled state is asked for.
struct Burnisher {
  SpiceWave current;
  SpiceWave voltage;
  double backV;
};

std::optional<Burnisher> spiceBurnisher(double poleOhm) {
  const std::string circuit = "burnisher\n" + kDiode + source("", poleOhm, 0) + "RN b 0 " + say(poleOhm) + "\n" +
                              bridge("") +
                              "RB x a 1m\nRA p q 0.6\nLA q e 10m\nCJ e n 0.02\nIT e n 13.115\nRT e n 10k\n";
  const auto waves = testing::spiceWaves(circuit, {"v(x)", "v(b)", "vs#branch", "v(e)", "v(n)"}, 0.8);
  if (waves.size() != 5) return std::nullopt;
  return Burnisher{waves[2], waves[0] - waves[1], (waves[3] - waves[4]).mean()};
}

TEST(AgainstNgspiceTransient, ARectifiedMachineKeepsItsAmpsAndLosesSpeedBehindALongCord) {
  const auto atPlate = spiceBurnisher(0.001);
  ASSERT_TRUE(atPlate) << "ngspice did not answer: is it installed?";
  physics::Nameplate plate;
  plate.model = physics::LoadModel::RectifiedDc;
  plate.voltage = atPlate->voltage.rms() * units::volt;
  plate.current = atPlate->current.rms() * units::ampere;
  plate.speedRpm = 2000.0;
  const auto made = makeLoadLaw(plate);
  ASSERT_TRUE(made) << made.error().code << " of " << plate.voltage.si() << " V, " << plate.current.si() << " A";
  const auto law = made.value();
  for (const double poleOhm : {0.25, 0.5, 1.0}) {
    const auto theirs = spiceBurnisher(poleOhm);
    ASSERT_TRUE(theirs);
    const auto ours = solved({kSourceV}, poleOhm, law).circuits[0];
    EXPECT_NEAR(ours.loads[0].totalRmsA / theirs->current.rms(), 1.0, 0.04) << poleOhm;
    const double ourDropV = kSourceV - std::abs(ours.loads[0].voltageV);
    const double theirDropV = kSourceV - std::abs(theirs->voltage.harmonic(1));
    EXPECT_GE(ourDropV / theirDropV, 1.0) << poleOhm << ": never told too small";
    EXPECT_LE(ourDropV / theirDropV, 1.12) << poleOhm;
    EXPECT_NEAR(*ours.loads[0].point.speedRpm / (2000.0 * theirs->backV / atPlate->backV), 1.0, 0.03) << poleOhm;
  }
}

// A supply that charges a capacitor through a filter: 240 W at the volts it finds.
std::string supply(const std::string& k) {
  const std::string across = "v(p" + k + ",n" + k + ")";
  return "RF" + k + " x" + k + " y" + k + " 0.3\nLF" + k + " y" + k + " a" + k + " 300u\nRL" + k + " y" + k + " a" + k +
         " 50\n" + bridge(k) + "C" + k + " p" + k + " n" + k + " 1000u\nB" + k + " p" + k + " n" + k + " I=240*" +
         across + "/pow(max(" + across + ",80),2)\n";
}

struct Supplies {
  SpiceWave current;  // of the first
  SpiceWave voltage;
  SpiceWave neutral;
};

std::optional<Supplies> spiceSupplies(const std::vector<double>& phasesDeg, double wireOhm) {
  std::string circuit = "supplies\n" + kDiode + "VN b m 0\nRM m 0 " + say(wireOhm) + "\n";
  for (std::size_t i = 0; i < phasesDeg.size(); ++i) {
    circuit += source(std::to_string(i), wireOhm, phasesDeg[i]) + supply(std::to_string(i));
  }
  const auto waves = testing::spiceWaves(circuit, {"v(x0)", "v(b)", "vs0#branch", "vn#branch"}, 0.5);
  if (waves.size() != 4) return std::nullopt;
  return Supplies{waves[2], waves[0] - waves[1], waves[3]};
}

std::shared_ptr<const physics::LoadLaw> supplyLaw(const Supplies& alone) {
  physics::Nameplate plate;
  plate.model = physics::LoadModel::ElectronicPlain;
  plate.voltage = alone.voltage.rms() * units::volt;
  plate.current = alone.current.rms() * units::ampere;
  return makeLoadLaw(plate).value();
}

TEST(AgainstNgspiceTransient, APlainSupplyHasTheHarmonicsOfItsTableRow) {
  const auto theirs = spiceSupplies({0}, 0.25);
  ASSERT_TRUE(theirs) << "ngspice did not answer: is it installed?";
  const auto ours = solved({kSourceV}, 0.25, supplyLaw(*theirs)).circuits[0];
  EXPECT_NEAR(ours.loads[0].totalRmsA / theirs->current.rms(), 1.0, 0.02);
  EXPECT_NEAR(std::abs(ours.loads[0].currentA) / std::abs(theirs->current.harmonic(1)), 1.0, 0.03);
  EXPECT_NEAR(ours.loads[0].point.thirdHarmonicA / std::abs(theirs->current.harmonic(3)), 1.0, 0.10);
  const double theirDropV = kSourceV - std::abs(theirs->voltage.harmonic(1));
  EXPECT_NEAR((kSourceV - std::abs(ours.loads[0].voltageV)) / theirDropV, 1.0, 0.05);
}

TEST(AgainstNgspiceTransient, ALongWireRoundsThePulsesOffAndOursStayTheCautiousOnes) {
  const auto nearby = spiceSupplies({0}, 0.05);
  const auto far = spiceSupplies({0}, 1.0);
  ASSERT_TRUE(nearby && far);
  const auto ours = solved({kSourceV}, 1.0, supplyLaw(*nearby)).circuits[0];
  const double ratio = ours.loads[0].totalRmsA / far->current.rms();
  EXPECT_GE(ratio, 1.0);
  EXPECT_LE(ratio, 1.40);
  const double theirDropV = kSourceV - std::abs(far->voltage.harmonic(1));
  EXPECT_NEAR((kSourceV - std::abs(ours.loads[0].voltageV)) / theirDropV, 1.0, 0.10);
}

TEST(AgainstNgspiceTransient, InAStarTheThirdsOfThreeSuppliesAddInTheNeutral) {
  const auto theirs = spiceSupplies({0, -120, 120}, 0.25);
  ASSERT_TRUE(theirs);
  const auto ours = solved(network::utility208Y().sourceV, 0.25, supplyLaw(*theirs)).circuits[0].branches[0];
  EXPECT_NEAR(theirs->neutral.rms() / theirs->current.rms(), std::numbers::sqrt3, 0.02);  // pulses that never meet
  EXPECT_GE(ours.neutralRmsA / theirs->neutral.rms(), 1.0);
  EXPECT_LE(ours.neutralRmsA / theirs->neutral.rms(), 1.12);
}

TEST(AgainstNgspiceTransient, OnASplitPhaseTheyCancelAndOursKeepsOnlyWhatItCannotKnow) {
  const auto theirs = spiceSupplies({0, 180}, 0.25);
  ASSERT_TRUE(theirs);
  EXPECT_LE(theirs->neutral.rms(), 0.01 * theirs->current.rms());
  const auto ours = solved(network::utilitySplitPhase().sourceV, 0.25, supplyLaw(*theirs)).circuits[0];
  const auto& point = ours.loads[0].point;
  const double otherA = std::sqrt(point.distortionA * point.distortionA - point.thirdHarmonicA * point.thirdHarmonicA);
  EXPECT_NEAR(ours.branches[0].neutralRmsA, std::numbers::sqrt2 * otherA, 1e-6);
  EXPECT_LE(ours.branches[0].neutralRmsA, 0.9 * ours.branches[0].poleRmsA[0]);
}

}  // namespace
}  // namespace cordreach
