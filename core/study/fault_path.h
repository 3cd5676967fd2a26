// SPDX-License-Identifier: GPL-3.0-or-later
// What a fault's current flows through on its way to the end of each cord of a hookup, in one state of its panel. The
// return counts as heavy as the line: earth and neutral of circuits and cords are.
#pragma once

#include <optional>
#include <vector>

#include "physics/fault_heat.h"
#include "physics/fault_loop.h"
#include "site/site.h"
#include "study/answer.h"
#include "study/panel_states.h"

namespace cordreach::study {

// One cord of the chain: cool as in the morning, and as warm as its run left it; with the whole loop up to its end.
struct FaultLink {
  physics::FaultCord cool;
  physics::FaultCord warm;
  std::complex<double> ohm20;  // its two conductors
  physics::FaultLoop coolPart;
  physics::FaultLoop warmPart;
  physics::FaultLoop coolLoop;
  physics::FaultLoop warmLoop;
  Band<units::Current> bolted;  // low: hot, with the least volts and joints of the standard; high: cold
  Band<units::Voltage> touch;   // of a frame at its end while the fault lasts
};

struct FaultPath {
  Band<units::Voltage> toEarth;
  std::vector<FaultLink> links;  // from the outlet on, one for each cord of the answer
};

// The hookup is plugged in in that state, and its cords are answered.
[[nodiscard]] FaultPath faultPathOf(const site::Site& site, const PanelState& state, const HookupAnswer& answer);

}  // namespace cordreach::study
