// SPDX-License-Identifier: GPL-3.0-or-later
// From an induction machine's plate to its fitted circuit and the torque it runs at.
#include "physics/plate_induction.h"

#include <algorithm>
#include <cmath>

namespace cordreach::physics {
namespace {

// Handbook plates: power factor 0.65 for capacitor-start, 0.85 for capacitor-run machines; the share of shaft power
// tells them apart, in between the two are joined by a straight line (own).
double inductionPowerFactor(double share) {
  const double mixed = 0.65 + 0.20 * std::clamp((share - 0.40) / 0.20, 0.0, 1.0);
  constexpr double kBestEfficiency = 0.85;
  return std::max(mixed, share / kBestEfficiency);
}

base::Result<InductionFit> fitPlate(const Nameplate& plate) {
  const double share = plate.shaftPower && shaftPowerPlausible(plate)
                           ? plate.shaftPower->si() / (plate.voltage.si() * plate.current.si())
                           : kDefaultShaftShare;
  InductionPlate fitted;
  fitted.voltageV = plate.voltage.si();
  fitted.currentA = plate.current.si() * modelDistortion(plate.model).fundamentalShare();
  fitted.powerFactor = inductionPowerFactor(share);
  fitted.efficiency = share / fitted.powerFactor;
  return fitInduction(fitted);
}

// The slip at which the circuit draws that fundamental at plate volts; amps rise with slip up to standstill.
double slipForAmps(const InductionLoad& load, double fundamentalA) {
  const AdmittanceOfRotor admittance = admittanceOfRotor(load.fit.circuit);
  double low = 1e-9;
  double high = 1.0;
  for (int i = 0; i < 60; ++i) {
    const double slip = 0.5 * (low + high);
    const double amps = std::abs(admittance.at(load.fit.circuit.r2Ohm / slip)) * load.plateV;
    (amps < fundamentalA ? low : high) = slip;
  }
  return low;
}

// The torque, of the plate's, at which the motor runs with `runningA` at plate volts; nothing when it can't: less than
// it draws idling, or more than at pull-out.
std::optional<double> torqueForAmps(InductionLoad load, double runningA) {
  const double fundamentalA = runningA * load.distortion.fundamentalShare();
  const double slip = slipForAmps(load, fundamentalA);
  const double airGapW =
      rotorView(load.fit.circuit).airGapWPerV2(load.fit.circuit.r2Ohm / slip) * load.plateV * load.plateV;
  const double speed = load.shaft == ShaftLoad::Fan ? (1.0 - slip) / (1.0 - load.fullLoadSlip) : 1.0;
  load.torqueFactor = (airGapW - load.fit.lossAirGapW) / (load.fit.loadAirGapW * speed * speed);
  if (!(load.torqueFactor >= 0.0 && load.torqueFactor < 10.0)) return std::nullopt;
  const LoadPoint point = makeInductionLaw(load)->at(load.plateV);
  const bool runsThere =
      point.hasRunningPoint && std::abs(std::abs(point.admittanceS) * load.plateV / fundamentalA - 1.0) < 1e-6;
  return runsThere ? std::optional(load.torqueFactor) : std::nullopt;
}

}  // namespace

base::Result<InductionLoad> inductionLoadOf(const Nameplate& plate) {
  const auto fit = fitPlate(plate);
  if (!fit) return fit.error();
  InductionLoad load;
  load.fit = fit.value();
  load.plateV = plate.voltage.si();
  load.shaft = plate.model == LoadModel::InductionFan ? ShaftLoad::Fan : ShaftLoad::ConstantTorque;
  load.fullLoadRpm = plate.speedRpm;
  if (plate.lockedRotorCurrent) load.lockedRotorA = plate.lockedRotorCurrent->si();
  load.distortion = modelDistortion(plate.model);
  if (plate.runningCurrent && *plate.runningCurrent != plate.current) {
    const auto torque = torqueForAmps(load, plate.runningCurrent->si());
    if (!torque) {
      return base::Error{"load.running_current_out_of_range", "", {{"current_a", plate.runningCurrent->si()}}};
    }
    load.torqueFactor = *torque;
  }
  load.torqueFactor *= plate.torqueFactor;
  return load;
}

}  // namespace cordreach::physics
