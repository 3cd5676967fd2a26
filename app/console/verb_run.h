// SPDX-License-Identifier: GPL-3.0-or-later
// `cordreach run`: a building's planned day, hour by hour.
#pragma once

#include "console/verbs.h"

namespace cordreach::console {

[[nodiscard]] Work declareRun(CLI::App& command, Work& work);

}  // namespace cordreach::console
