// SPDX-License-Identifier: GPL-3.0-or-later
// The verbs of the console, one row each in the table of verbs.cpp. A verb is one file: it declares its options on its
// own subcommand and answers what is to be done once the line has been read.
#pragma once

#include <functional>
#include <span>

namespace CLI {
class App;
}

namespace cordreach::console {

struct Console;

// Does the work and answers the exit code: 0 sound, 1 CAUTION or above, 2 bad input.
using Work = std::function<int(const Console&)>;

struct Verb {
  const char* name;
  const char* summary;
  // Declares the verb's options; the Work owns the values that they are read into. A verb of several words sets `work`
  // from its subcommands and answers an empty Work.
  Work (*declare)(CLI::App& command, Work& work);
};

[[nodiscard]] std::span<const Verb> verbs();

}  // namespace cordreach::console
