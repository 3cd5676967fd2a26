// SPDX-License-Identifier: GPL-3.0-or-later
// `cordreach site`: begins a site file, or says whether files are in order.
#pragma once

#include "console/verbs.h"

namespace cordreach::console {

// Sets `work` from its own subcommands and answers an empty Work.
[[nodiscard]] Work declareSite(CLI::App& command, Work& work);

}  // namespace cordreach::console
