// SPDX-License-Identifier: GPL-3.0-or-later
// Switching on: a peak and how long it lasts, by class, from start_class.csv; and locked-rotor amps from code letters,
// LRA = kVA/hp × hp × 1000 / V (NEC Table 430.7(B), seen).
#pragma once

#include <memory>
#include <optional>

#include "base/result.h"
#include "physics/load_law.h"
#include "physics/load_nameplate.h"
#include "units/quantity.h"

namespace cordreach::physics {

enum class StartEdge { Low, Typical, High };

// At plate volts, with nothing in front of the machine.
struct StartBand {
  units::Current peakLow, peakTypical, peakHigh;  // rms
  units::Duration shortest, longest;
  double powerFactor = 1;

  [[nodiscard]] units::Current peak(StartEdge edge) const;
  // Between shortest and longest: their geometric mean for Typical.
  [[nodiscard]] units::Duration duration(StartEdge edge) const;
};

// The class's multiple of plate amps; a plate with locked-rotor amps has these as its peak.
[[nodiscard]] StartBand startBand(const Nameplate& plate);

// The machine while it starts, as the impedance that draws that peak at plate volts: what a cord in front lowers.
[[nodiscard]] std::shared_ptr<const LoadLaw> makeStartLaw(const Nameplate& plate, StartEdge edge);

struct LockedRotorAmps {
  units::Current low;
  std::optional<units::Current> high;  // none: letter V has no upper limit
};
// Error: motor.unknown_code_letter, place: the letter.
[[nodiscard]] base::Result<LockedRotorAmps> lockedRotorAmps(char codeLetter, units::Power shaft,
                                                            units::Voltage voltage);

// Run-up: t = J Δω / T, with the average accelerating torque, over 0.
[[nodiscard]] units::Duration runUpTime(double inertiaKgM2, double speedRpm, units::Torque average);

// Run-up time at a share of plate volts against that at full volts, when the motor's average torque goes as V²:
// (m − l)/(m v² − l); torques in rated torques. None when it does not start.
[[nodiscard]] std::optional<double> relativeRunUpTime(double voltageShare, double motorTorque, double loadTorque);

}  // namespace cordreach::physics
