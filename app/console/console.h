// SPDX-License-Identifier: GPL-3.0-or-later
// The console face: reads a command line, runs its verb and answers the exit code.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "base/error.h"
#include "console/output.h"
#include "text/phrasebook.h"

namespace cordreach::console {

enum Exit : int { kSound = 0, kUnsound = 1, kBadInput = 2, kOwnBug = 70 };

struct Console {
  Output& out;
  Output& errors;
  bool color = false;                     // signal words in bold
  text::Phrasebook book;                  // in which it speaks unless a verb is told a language
  std::function<bool()> windowCanOpen{};  // empty: this build has no window

  // Writes an answer to standard output. What could not be written is bad output: one sentence, exit 2.
  [[nodiscard]] int answer(const std::string& text, int exit) const;
  // One sentence on standard error, exit 2.
  [[nodiscard]] int refuse(const base::Error& error) const;
  // The same, about what was given for an option: "--amps: ...".
  [[nodiscard]] int refuse(const std::string& option, const base::Error& error) const;
  // The same, about a file: "tower.json at /outlets/3: ...".
  [[nodiscard]] int refuseFile(const std::string& file, const base::Error& error) const;
  [[nodiscard]] int refuseSentence(const std::string& sentence) const;
};

// The exit code; nothing when the line names no verb and asks for nothing, so that a window may open instead.
[[nodiscard]] std::optional<int> run(const std::vector<std::string>& arguments, const Console& console);

// Version, verbs and how to learn more.
[[nodiscard]] std::string welcome();

}  // namespace cordreach::console
