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

// Total rms at plate volts, or nothing when the motor can't carry that torque there.
std::optional<double> ampsAtPlate(InductionLoad load, double torqueFactor) {
  load.torqueFactor = torqueFactor;
  const auto law = makeInductionLaw(load);
  const LoadPoint point = law->at(load.plateV);
  if (!point.hasRunningPoint) return std::nullopt;
  return std::hypot(std::abs(point.admittanceS) * load.plateV, point.distortionA);
}

// The torque at which the motor draws `runningA` at plate volts; amps rise with torque.
std::optional<double> torqueForAmps(const InductionLoad& load, double runningA) {
  const auto idleA = ampsAtPlate(load, 0.0);
  if (!idleA || runningA < *idleA) return std::nullopt;
  double low = 0.0;
  double high = 4.0;  // beyond any breakdown ratio that is fitted
  double reachedA = *idleA;
  for (int i = 0; i < 60; ++i) {
    const double middle = 0.5 * (low + high);
    const auto amps = ampsAtPlate(load, middle);
    if (amps && *amps <= runningA) {
      low = middle;
      reachedA = *amps;
    } else {
      high = middle;
    }
  }
  // At pull-out the amps end below what was asked for.
  if (std::abs(reachedA - runningA) > 1e-6 * runningA) return std::nullopt;
  return low;
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
