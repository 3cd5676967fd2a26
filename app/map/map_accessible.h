// SPDX-License-Identifier: GPL-3.0-or-later
// The plan's things in the accessible tree: each outlet, machine, fixed load and panel with a name that says it all.
#pragma once

namespace cordreach::app {

// Once for the process; more calls do nothing.
void installMapAccessibility();

}  // namespace cordreach::app
