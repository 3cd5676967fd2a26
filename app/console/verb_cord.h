// SPDX-License-Identifier: GPL-3.0-or-later
// `cordreach cord`: the one cord to take for a machine, a distance and an outlet.
#pragma once

#include "console/verbs.h"

namespace cordreach::console {

[[nodiscard]] Work declareCord(CLI::App& command, Work& work);

}  // namespace cordreach::console
