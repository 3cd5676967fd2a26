// SPDX-License-Identifier: GPL-3.0-or-later
// From a nameplate to its law.
#include "physics/load_nameplate.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "physics/load_impedance.h"
#include "physics/load_induction.h"
#include "physics/load_rectified.h"
#include "physics/load_static.h"

namespace cordreach::physics {
namespace {

using LawResult = base::Result<std::shared_ptr<const LoadLaw>>;

// Own limits on efficiency times power factor of a continuous rating.
constexpr double kLeastShaftShare = 0.30;
constexpr double kMostShaftShare = 0.80;

bool within(double value, double low, double high) { return value >= low && value <= high; }

double shaftShare(const Nameplate& plate) { return plate.shaftPower->si() / (plate.voltage.si() * plate.current.si()); }

std::optional<base::Error> absurdity(const Nameplate& plate) {
  const double amps = plate.current.si();
  if (!within(plate.voltage.si(), 24.0, 1000.0)) {
    return base::Error{"load.voltage_out_of_range", "", {{"voltage_v", plate.voltage.si()}}};
  }
  if (!within(amps, 1e-3, 1000.0)) return base::Error{"load.current_out_of_range", "", {{"current_a", amps}}};
  if (plate.runningCurrent && !within(plate.runningCurrent->si(), 1e-3, 1000.0)) {
    return base::Error{"load.running_current_out_of_range", "", {{"current_a", plate.runningCurrent->si()}}};
  }
  if (plate.shaftPower && !(plate.shaftPower->si() > 0.0 && shaftShare(plate) <= 3.0)) {
    return base::Error{"load.efficiency_out_of_range", "", {{"power_w", plate.shaftPower->si()}}};
  }
  if (plate.speedRpm && !(*plate.speedRpm > 0.0 && *plate.speedRpm <= 100000.0)) {
    return base::Error{"load.speed_out_of_range", "", {{"speed_rpm", *plate.speedRpm}}};
  }
  if (!within(plate.torqueFactor, 0.0, 10.0)) {
    return base::Error{"load.torque_out_of_range", "", {{"torque_ratio", plate.torqueFactor}}};
  }
  if (plate.lockedRotorCurrent && !within(plate.lockedRotorCurrent->si() / amps, 1.0, 30.0)) {
    return base::Error{"load.locked_rotor_out_of_range", "", {{"current_a", plate.lockedRotorCurrent->si()}}};
  }
  return std::nullopt;
}

// Displacement factor: the true power factor without what the harmonics take from it.
double displacement(LoadModel model) {
  const double cosine = modelDefaults(model).powerFactor / modelDistortion(model).fundamentalShare();
  return cosine > 1.0 - 1e-6 ? 1.0 : cosine;  // the tables' digits end before 1 is reached
}

std::shared_ptr<const LoadLaw> makeExponentLaw(const Nameplate& plate, double runningA) {
  const ModelDefaults& defaults = modelDefaults(plate.model);
  StaticLoad load;
  load.baseV = plate.voltage.si();
  load.nominalV = systemNominalV(load.baseV);
  load.distortion = modelDistortion(plate.model);
  const double apparentVa = load.baseV * runningA * load.distortion.fundamentalShare();
  const double cosine = displacement(plate.model);
  load.activeW = apparentVa * cosine;
  load.reactiveVar = apparentVa * std::sqrt(1.0 - cosine * cosine);
  load.shape.exponentP = defaults.exponentP;
  load.shape.exponentQ = defaults.exponentQ;
  // Without reactive power the second exponent is that of the distortion power, which takes its place.
  load.distortionFollowsQ = cosine == 1.0;
  if (plate.model == LoadModel::Universal) load.speedRpm = plate.speedRpm;
  return makeStaticLaw(load);
}

// Handbook plates: power factor 0.65 for capacitor-start, 0.85 for capacitor-run machines; the share of shaft power
// tells them apart, in between the two are joined by a straight line (own).
double inductionPowerFactor(double share) {
  const double mixed = 0.65 + 0.20 * std::clamp((share - 0.40) / 0.20, 0.0, 1.0);
  constexpr double kBestEfficiency = 0.85;
  return std::max(mixed, share / kBestEfficiency);
}

base::Result<InductionFit> fitPlate(const Nameplate& plate) {
  const double share = plate.shaftPower && shaftPowerPlausible(plate) ? shaftShare(plate) : kDefaultShaftShare;
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

LawResult makeInduction(const Nameplate& plate) {
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
  return makeInductionLaw(load);
}

}  // namespace

bool shaftPowerPlausible(const Nameplate& plate) {
  return !plate.shaftPower || within(shaftShare(plate), kLeastShaftShare, kMostShaftShare);
}

double systemNominalV(double plateVoltageV) {
  return plateVoltageV >= 110.0 && plateVoltageV < 120.0 ? 120.0 : plateVoltageV;
}

LawResult makeLoadLaw(const Nameplate& plate) {
  if (auto error = absurdity(plate)) return *error;
  const units::Current running = plate.runningCurrent.value_or(plate.current);
  switch (plate.model) {
    case LoadModel::Resistance:
      return makeHeaterLaw(plate.voltage, running);
    case LoadModel::Induction:
    case LoadModel::InductionFan:
      return makeInduction(plate);
    case LoadModel::RectifiedDc:
      return makeRectifiedLaw({plate.voltage, running, plate.speedRpm, plate.torqueFactor});
    default:
      return makeExponentLaw(plate, running.si());
  }
}

}  // namespace cordreach::physics
