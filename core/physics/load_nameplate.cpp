// SPDX-License-Identifier: GPL-3.0-or-later
// From a nameplate to its law.
#include "physics/load_nameplate.h"

#include <cmath>
#include <string>

#include "physics/load_impedance.h"
#include "physics/load_induction.h"
#include "physics/load_rectified.h"
#include "physics/load_static.h"
#include "physics/plate_induction.h"

namespace cordreach::physics {
namespace {

using LawResult = base::Result<std::shared_ptr<const LoadLaw>>;

// Own limits on efficiency times power factor of a continuous rating.
constexpr double kLeastShaftShare = 0.30;
constexpr double kMostShaftShare = 0.80;

bool within(double value, double low, double high) { return value >= low && value <= high; }

double shaftShare(const Nameplate& plate) { return plate.shaftPower->si() / (plate.voltage.si() * plate.current.si()); }

}  // namespace

std::optional<base::Error> plateError(const Nameplate& plate) {
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

namespace {

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

}  // namespace

bool shaftPowerPlausible(const Nameplate& plate) {
  return !plate.shaftPower || within(shaftShare(plate), kLeastShaftShare, kMostShaftShare);
}

double systemNominalV(double plateVoltageV) {
  return plateVoltageV >= 110.0 && plateVoltageV < 120.0 ? 120.0 : plateVoltageV;
}

LawResult makeLoadLaw(const Nameplate& plate) {
  if (auto error = plateError(plate)) return *error;
  const units::Current running = plate.runningCurrent.value_or(plate.current);
  switch (plate.model) {
    case LoadModel::Resistance:
      return makeHeaterLaw(plate.voltage, running);
    case LoadModel::Induction:
    case LoadModel::InductionFan: {
      const auto load = inductionLoadOf(plate);
      if (!load) return load.error();
      return makeInductionLaw(load.value());
    }
    case LoadModel::RectifiedDc:
      return makeRectifiedLaw({plate.voltage, running, plate.speedRpm, plate.torqueFactor});
    default:
      return makeExponentLaw(plate, running.si());
  }
}

}  // namespace cordreach::physics
