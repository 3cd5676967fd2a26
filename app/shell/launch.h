// SPDX-License-Identifier: GPL-3.0-or-later
// Opens the window and runs it to its end.
#pragma once

#include <string>

namespace cordreach::app {

struct Launch {
  std::string file;           // empty: the last site, or the demo building
  bool inSourceTree = false;  // built and run in place: shows the demo building
};

// The exit code. `argumentCount` and `arguments` are the process's own, for Qt to take its options from.
[[nodiscard]] int runWindow(int& argumentCount, char** arguments, const Launch& launch);

}  // namespace cordreach::app
