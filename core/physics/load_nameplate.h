// SPDX-License-Identifier: GPL-3.0-or-later
// What a machine's nameplate says, and the law that follows from it: nameplate amps are drawn at nameplate volts
// unless the machine is known to run at others.
#pragma once

#include <memory>
#include <optional>

#include "base/result.h"
#include "physics/load_law.h"
#include "physics/load_model.h"
#include "units/quantity.h"

namespace cordreach::physics {

struct Nameplate {
  LoadModel model = LoadModel::Resistance;
  units::Voltage voltage = 115.0 * units::volt;  // what a machine for a 120 V system is marked with
  units::Current current;
  std::optional<units::Current> runningCurrent{};  // total rms at plate volts with the usual load; none: the plate's
  std::optional<units::Power> shaftPower{};        // used by induction only
  std::optional<double> speedRpm{};                // of what turns (the pad), at plate volts and the usual load
  std::optional<units::Current> lockedRotorCurrent{};  // induction, at plate volts; none: from the fitted circuit
  double torqueFactor = 1.0;  // drag against the usual load; used by induction and rectified dc
};

// Shaft power over plate volts times amps is efficiency times power factor. Outside 0.30 to 0.80 (own limits) the
// plate's power is not a continuous shaft power, and the fit uses the class default kDefaultShaftShare instead.
inline constexpr double kDefaultShaftShare = 0.622;  // 1.5 hp at 120 V, 15 A: own arithmetic
[[nodiscard]] bool shaftPowerPlausible(const Nameplate& plate);

// The nominal volts of the system a plate belongs to: 120 for 110 to 119 V, else the plate's own.
[[nodiscard]] double systemNominalV(double plateVoltageV);

// Errors, each with the offending number as argument: load.voltage_out_of_range (24 to 1000 V),
// load.current_out_of_range (1 mA to 1000 A), load.running_current_out_of_range (as current),
// load.efficiency_out_of_range (shaft power not positive or over three times volts times amps), load.speed_out_of_range
// (over 0, up to 100 000 rpm), load.torque_out_of_range (0 to 10), load.locked_rotor_out_of_range (1 to 30 times the
// plate's amps).
[[nodiscard]] std::optional<base::Error> plateError(const Nameplate& plate);
// Those; of induction also load.no_circuit, and load.running_current_out_of_range for what it draws neither idling nor
// before pull-out.
[[nodiscard]] base::Result<std::shared_ptr<const LoadLaw>> makeLoadLaw(const Nameplate& plate);

}  // namespace cordreach::physics
