// SPDX-License-Identifier: GPL-3.0-or-later
// Pad factors from their tables, and the torque behind a plate.
#include "physics/pad_state.h"

#include <numbers>

#include "physics/plate_induction.h"
#include "physics/start_dc.h"
#include "tables/table.h"

namespace cordreach::physics {
namespace {

constexpr double kFastRpm = 700.0;  // own: between slow machines (to 400) and fast ones (from 1000)

}  // namespace

DragBand padDrag(std::string_view state) {
  const tables::Row& row = tables::table("pad_drag").at(state);
  return {row.number("drag_likely"), row.number("drag_low"), row.number("drag_high")};
}

std::optional<double> padFamilyRpm(std::string_view family) {
  const tables::Row* row = tables::table("pad_families").find(family);
  return row != nullptr ? std::optional(row->number("rated_rpm")) : std::nullopt;
}

DragBand familyDrag(std::string_view family, double machineRpm) {
  const auto rpm = padFamilyRpm(family);
  if (!rpm || (*rpm > kFastRpm) == (machineRpm > kFastRpm)) return {};
  return padDrag(*rpm > kFastRpm ? "too_fine" : "too_coarse");
}

std::optional<units::Torque> plateTorque(const Nameplate& plate) {
  if (!plate.speedRpm || plateError(plate)) return std::nullopt;
  if (plate.model == LoadModel::RectifiedDc) {
    const RectifiedMotor motor{plate.voltage, plate.runningCurrent.value_or(plate.current), plate.speedRpm,
                               plate.torqueFactor};
    return (1.0 - kLossTorqueShare) * dcBehindBridge({motor, 1.0}).load;
  }
  if (plate.model != LoadModel::Induction) return std::nullopt;
  const auto load = inductionLoadOf(plate);
  if (!load) return std::nullopt;
  const double synchronousRadPerS = *plate.speedRpm / (1.0 - load.value().fullLoadSlip) * std::numbers::pi / 30.0;
  return units::Torque::fromSi(load.value().fit.loadAirGapW * load.value().torqueFactor / synchronousRadPerS);
}

}  // namespace cordreach::physics
