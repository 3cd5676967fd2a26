// SPDX-License-Identifier: GPL-3.0-or-later
// What an induction machine's plate comes to: the circuit fitted to it, and the torque at which it draws its running
// amps. Power factor 0.65 below a shaft share of 0.40, 0.85 above 0.60, a straight line between (own).
#pragma once

#include "base/result.h"
#include "physics/load_induction.h"
#include "physics/load_nameplate.h"

namespace cordreach::physics {

// Errors: load.no_circuit; load.running_current_out_of_range. The plate's other limits are makeLoadLaw's.
[[nodiscard]] base::Result<InductionLoad> inductionLoadOf(const Nameplate& plate);

}  // namespace cordreach::physics
