// SPDX-License-Identifier: GPL-3.0-or-later
// Where the fundamental power of a solution goes. Computed from the loads' currents and the branches' impedances, not
// from the solver's inner state, so that it can tell a wrong solution: source = loads + branches within rounding.
#pragma once

#include "network/solve.h"

namespace cordreach::network {

struct PowerBalance {
  Phasor sourceVa;  // given by the open-circuit sources: watts and, as imaginary part, vars
  Phasor loadsVa;
  Phasor branchesVa;  // lost in branches, feeders and source impedances
};

[[nodiscard]] PowerBalance powerBalance(const Network& network, const Solution& solution);

}  // namespace cordreach::network
