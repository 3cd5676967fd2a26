// SPDX-License-Identifier: GPL-3.0-or-later
// A start known only by its class: the peak and how long it lasts (start_class.csv), behind a supply. The peak is the
// class's impedance, so what stands in front lowers it; the volts that are then left lengthen the start.
//   universal          I = I_run + (I_peak - I_run) e^(-3 t/T), T longer as 1/v²: torque and its fan's both go as V²
//   compressor         I_peak for T, then I_run; T longer as (m - l)/(m v² - l), m 1.6 and l 0.9 of rated torque:
//                      1.8 times at 90 % of plate volts, 5.6 at 80, never below 75 (own, to a remembered "long stall
//                      under about 90 %")
//   anything else      I_peak for T, then I_run
// v: volts at the terminals during the peak, of the plate's; longer only where under 1.
#pragma once

#include "base/result.h"
#include "physics/start_class.h"
#include "physics/start_run.h"
#include "physics/thevenin.h"

namespace cordreach::physics {

// Errors: those of makeLoadLaw.
[[nodiscard]] base::Result<StartRun> startByClass(const Nameplate& plate, StartEdge edge, const Thevenin& supply);

// What T is multiplied by; none: never.
[[nodiscard]] std::optional<double> startStretch(LoadModel model, double voltageShare);

}  // namespace cordreach::physics
