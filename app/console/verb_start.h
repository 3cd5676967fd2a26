// SPDX-License-Identifier: GPL-3.0-or-later
// `cordreach start`: what switching a machine on does.
#pragma once

#include "console/verbs.h"

namespace cordreach::console {

[[nodiscard]] Work declareStart(CLI::App& command, Work& work);

}  // namespace cordreach::console
