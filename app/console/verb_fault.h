// SPDX-License-Identifier: GPL-3.0-or-later
// `fault`: what flows into a fault at a cord's end, what cuts it off, and what becomes of the cord and of a frame.
#pragma once

#include "console/verbs.h"

namespace cordreach::console {

Work declareFault(CLI::App& command, Work& work);

}  // namespace cordreach::console
