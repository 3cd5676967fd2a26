// SPDX-License-Identifier: GPL-3.0-or-later
// A site's supply as a source of the network: open-circuit volts per phase, and the impedance behind them.
#pragma once

#include "network/wiring_system.h"
#include "site/supply.h"
#include "study/corner.h"

namespace cordreach::study {

// Volts not stated: nominal, within 5 % either way at the corners (ANSI C84.1 service range A, from memory).
// Impedance not stated: the network's default for that kind of source.
[[nodiscard]] network::Supply sourceOf(const site::Supply& supply, Corner corner);

// Used for a panel that names no supply.
[[nodiscard]] site::Supply assumedSupply();

[[nodiscard]] units::Voltage nominalLineToNeutral(site::WiringSystem system);

}  // namespace cordreach::study
