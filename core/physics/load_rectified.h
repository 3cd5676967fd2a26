// SPDX-License-Identifier: GPL-3.0-or-later
// A permanent-magnet dc motor behind a diode bridge, the usual fast corded burnisher: amps follow drag, speed follows
// volts. Vdc = (2√2/π) V − 4 V (two diodes and the brushes); Idc = (T + T_loss)/K; speed ~ Vdc − Idc Ra.
// Line rms = 1.11 Idc, its fundamental in phase with the volts; shape of the current: load_distortion.csv.
// Valid down to the voltage at which it stands; below, it is the impedance it has there.
// Sources: single-phase bridge average, closed form; drops, resistance share and loss share: own estimates from
// K 0.459 V·s/rad, Ra 0.6 ohm, T_loss 0.6 N·m at 5.42 N·m and 2000 rpm.
#pragma once

#include <memory>
#include <optional>

#include "physics/load_law.h"
#include "units/quantity.h"

namespace cordreach::physics {

inline constexpr double kBridgeMeanOfRms = 0.90031631615710607;  // 2√2/π, closed form
inline constexpr double kBridgeDropV = 4.0;                      // own estimate
inline constexpr double kLineRmsPerDcAmp = 1.11;                 // own choice between 1.0 (smooth) and 1.3
inline constexpr double kArmatureDropShare = 0.0758;             // Ra Idc over Vdc at the usual load: own estimate
inline constexpr double kLossTorqueShare = 0.0997;               // T_loss over T + T_loss: own estimate

struct RectifiedMotor {
  units::Voltage voltage;            // plate
  units::Current current;            // total rms at that voltage with the usual drag
  std::optional<double> speedRpm{};  // there
  double torqueFactor = 1.0;         // drag against the usual, 0 or more
};

[[nodiscard]] std::shared_ptr<const LoadLaw> makeRectifiedLaw(const RectifiedMotor& motor);

}  // namespace cordreach::physics
