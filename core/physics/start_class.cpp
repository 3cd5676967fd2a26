// SPDX-License-Identifier: GPL-3.0-or-later
// Start peaks, code letters and run-up.
#include "physics/start_class.h"

#include <cmath>
#include <complex>
#include <numbers>
#include <string_view>

#include "base/contract.h"
#include "physics/load_impedance.h"
#include "tables/table.h"

namespace cordreach::physics {

units::Current StartBand::peak(StartEdge edge) const {
  if (edge == StartEdge::Low) return peakLow;
  return edge == StartEdge::High ? peakHigh : peakTypical;
}

units::Duration StartBand::duration(StartEdge edge) const {
  if (edge == StartEdge::Low) return shortest;
  if (edge == StartEdge::High) return longest;
  return units::Duration::fromSi(std::sqrt(shortest.si() * longest.si()));
}

StartBand startBand(const Nameplate& plate) {
  const tables::Row& row = tables::table("start_class").at(tableKey(plate.model));
  const units::Current unit = row.text("peak_is") == "ampere" ? units::ampere : plate.current;
  StartBand band;
  band.peakLow = row.number("peak_low") * unit;
  band.peakTypical = row.number("peak_typical") * unit;
  band.peakHigh = row.number("peak_high") * unit;
  if (plate.lockedRotorCurrent) {
    band.peakLow = band.peakTypical = band.peakHigh = *plate.lockedRotorCurrent;
  }
  band.shortest = row.number("time_low_s") * units::second;
  band.longest = row.number("time_high_s") * units::second;
  band.powerFactor = row.number("power_factor");
  return band;
}

std::shared_ptr<const LoadLaw> makeStartLaw(const Nameplate& plate, StartEdge edge) {
  const StartBand band = startBand(plate);
  const double sine = std::sqrt(1.0 - band.powerFactor * band.powerFactor);
  return makeImpedanceLaw(std::complex<double>(band.powerFactor, sine) * (plate.voltage / band.peak(edge)).si());
}

base::Result<LockedRotorAmps> lockedRotorAmps(char codeLetter, units::Power shaft, units::Voltage voltage) {
  const tables::Row* row = tables::table("motor_code_letter").find(std::string_view(&codeLetter, 1));
  if (row == nullptr) return base::Error{"motor.unknown_code_letter", std::string(1, codeLetter), {}};
  const double voltAmps = 1000.0 * shaft.in(units::horsepower);
  LockedRotorAmps amps{units::Current::fromSi(row->number("low_kva_per_hp") * voltAmps / voltage.si()), std::nullopt};
  if (!row->empty("high_kva_per_hp")) {
    amps.high = units::Current::fromSi(row->number("high_kva_per_hp") * voltAmps / voltage.si());
  }
  return amps;
}

units::Duration runUpTime(double inertiaKgM2, double speedRpm, units::Torque average) {
  CORDREACH_EXPECTS(average.si() > 0.0);
  return units::Duration::fromSi(inertiaKgM2 * speedRpm * std::numbers::pi / 30.0 / average.si());
}

std::optional<double> relativeRunUpTime(double voltageShare, double motorTorque, double loadTorque) {
  CORDREACH_EXPECTS(motorTorque > loadTorque);
  const double left = motorTorque * voltageShare * voltageShare - loadTorque;
  if (left <= 0.0) return std::nullopt;
  return (motorTorque - loadTorque) / left;
}

}  // namespace cordreach::physics
