// SPDX-License-Identifier: GPL-3.0-or-later
// `cordreach heat`: how hot a cord gets at a current.
#pragma once

#include "console/verbs.h"

namespace cordreach::console {

[[nodiscard]] Work declareHeat(CLI::App& command, Work& work);

}  // namespace cordreach::console
