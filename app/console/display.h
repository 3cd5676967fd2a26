// SPDX-License-Identifier: GPL-3.0-or-later
// Asks whether a window could be opened, without Qt, which aborts the process where it can't.
#pragma once

namespace cordreach::console {

// True when the X server that DISPLAY names accepts a connection with this user's rights. Blocks as long as the
// server keeps silent; a caller who can't wait puts a time limit around the process.
bool displayAnswers();

}  // namespace cordreach::console
