// SPDX-License-Identifier: GPL-3.0-or-later
// A machine's plate as the physics takes it, with what is assumed where it was not read.
#pragma once

#include <string>

#include "physics/load_nameplate.h"
#include "site/site.h"
#include "units/quantity.h"

namespace cordreach::study {

// Nameplate volts when the plate was not read: 115 V on a 120 V system, the system's own elsewhere.
[[nodiscard]] units::Voltage plateVoltageOf(const site::Inlet& inlet, units::Voltage nominal);

[[nodiscard]] const site::Inlet& inletOf(const site::Machine& machine, const std::string& name);

// With the drag that the plate stands for; what the pad changes of that is pad_in_use.h's. `nominal` is the system's
// voltage between the poles it is on.
[[nodiscard]] physics::Nameplate nameplateOf(const site::Site& site, const site::Hookup& hookup,
                                             units::Voltage nominal);

}  // namespace cordreach::study
