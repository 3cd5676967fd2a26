// SPDX-License-Identifier: GPL-3.0-or-later
// The wiring systems and their source impedances.
#include "network/wiring_system.h"

#include <numbers>

#include "base/contract.h"

namespace cordreach::network {
namespace {

// Own choice, not a measurement: a 25 kVA transformer of 2 % (0.012 ohm at 120 V) and some 15 m of service and panel
// wiring leave 0.02 to 0.1 ohm; behind a branch of 20 m of 12 AWG the choice moves the end volts by under 0.5 %.
constexpr units::Resistance kDefaultSourceLoop = 0.06 * units::ohm;
constexpr const char* kDefaultSourceNote = "default source loop of 0.06 ohm, phase to neutral and back";

// Own choices: a small generator with a voltage regulator droops about 5 % up to its rating, an inverter about 2 %.
constexpr double kGeneratorDroop = 0.05;
constexpr double kInverterDroop = 0.02;

Phasor turned(double volts, double degrees) { return std::polar(volts, degrees * std::numbers::pi / 180.0); }

Supply utility(std::string key, std::vector<Phasor> sourceV, units::Resistance loop) {
  CORDREACH_EXPECTS(loop.si() >= 0.0);
  const Phasor half = 0.5 * loop.in(units::ohm);
  const bool isDefault = loop == kDefaultSourceLoop;
  return {std::move(key), std::move(sourceV), Branch{half, half},
          isDefault ? tables::Source{kDefaultSourceNote, tables::SourceStatus::Own}
                    : tables::Source{"given for this building", tables::SourceStatus::Own}};
}

std::vector<Phasor> threePhases(double volts) { return {turned(volts, 0), turned(volts, -120), turned(volts, 120)}; }

Supply local(std::string key, LocalOutput output, units::Power rating, double droop) {
  CORDREACH_EXPECTS(rating.si() > 0.0);
  Supply supply;
  supply.limitsItsCurrent = true;
  const double ratingVa = rating.in(units::watt);
  const double volts = output == LocalOutput::Single230 ? 230.0 : 120.0;
  const double windings = output == LocalOutput::Split120And240 ? 2.0 : 1.0;
  supply.source.poleOhm = droop * volts * volts / (ratingVa / windings);
  supply.sourceV = {turned(volts, 0)};
  if (output == LocalOutput::Split120And240) supply.sourceV.push_back(turned(volts, 180));
  supply.key = std::move(key) + (output == LocalOutput::Single120        ? "_120"
                                 : output == LocalOutput::Split120And240 ? "_120_240"
                                                                         : "_230");
  return supply;
}

}  // namespace

units::Resistance defaultSourceLoop() { return kDefaultSourceLoop; }

Supply utilitySplitPhase(units::Resistance loop) {
  return utility("utility_120_240", {turned(120, 0), turned(120, 180)}, loop);
}

Supply utility208Y(units::Resistance loop) { return utility("utility_208y_120", threePhases(120), loop); }

Supply utility230(units::Resistance loop) { return utility("utility_230", {turned(230, 0)}, loop); }

Supply utility230Y400(units::Resistance loop) { return utility("utility_230_400", threePhases(230), loop); }

units::Resistance transformerLoop(units::Voltage winding, units::Power rating, double perUnit) {
  CORDREACH_EXPECTS(rating.si() > 0.0 && perUnit >= 0.0);
  return perUnit * winding.in(units::volt)*winding.in(units::volt) / rating.in(units::watt)*units::ohm;
}

Supply generator(LocalOutput output, units::Power rating) {
  Supply supply = local("generator", output, rating, kGeneratorDroop);
  supply.impedance = {"5 % steady droop at the rating of a regulated small generator", tables::SourceStatus::Own};
  return supply;
}

Supply inverter(LocalOutput output, units::Power rating) {
  Supply supply = local("inverter", output, rating, kInverterDroop);
  supply.impedance = {"2 % steady droop at the rating of an inverter", tables::SourceStatus::Own};
  return supply;
}

}  // namespace cordreach::network
