// SPDX-License-Identifier: GPL-3.0-or-later
// `cordreach trip`: when a breaker trips at a current.
#pragma once

#include "console/verbs.h"

namespace cordreach::console {

[[nodiscard]] Work declareTrip(CLI::App& command, Work& work);

}  // namespace cordreach::console
