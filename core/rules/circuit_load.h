// SPDX-License-Identifier: GPL-3.0-or-later
// A circuit's load as the code counts it, and who makes it up.
#pragma once

#include "rules/finding_builder.h"

namespace cordreach::rules {

// The larger of nameplate and solved amps. The plates of a circuit of several poles can't be summed into one pole.
[[nodiscard]] units::Current countedLoad(const study::CircuitAnswer& answer, const site::Circuit& circuit);

// Hookups with a share of the circuit at its worst moment.
[[nodiscard]] std::vector<const HookupCase*> sharing(const study::CircuitAnswer& answer, const Case& in);

}  // namespace cordreach::rules
