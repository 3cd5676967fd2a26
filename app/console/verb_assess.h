// SPDX-License-Identifier: GPL-3.0-or-later
// `cordreach assess`: what a building's plan comes to.
#pragma once

#include "console/verbs.h"

namespace cordreach::console {

[[nodiscard]] Work declareAssess(CLI::App& command, Work& work);

}  // namespace cordreach::console
