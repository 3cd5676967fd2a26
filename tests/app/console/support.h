// SPDX-License-Identifier: GPL-3.0-or-later
// Runs a command line in this process and keeps what it wrote.
#pragma once

#include <string>
#include <vector>

#include "console/console.h"

namespace cordreach::console {

struct Ran {
  int exit = -1;  // -1: the line named no verb
  std::string out;
  std::string error;
};

inline Ran ranIn(const text::Phrasebook& book, const std::vector<std::string>& arguments, bool color = false) {
  StringOutput out;
  StringOutput error;
  const Console console{out, error, color, book, {}};
  const std::optional<int> exit = run(arguments, console);
  return {exit.value_or(-1), out.text(), error.text()};
}

inline Ran ran(const std::vector<std::string>& arguments) {
  return ranIn(text::Phrasebook::load("en").value(), arguments);
}

// One sentence: one line, a capital or name before, a full stop at its end.
inline bool isOneSentence(const std::string& error) {
  return error.rfind("cordreach: ", 0) == 0 && error.size() > 13 && error.find('\n') == error.size() - 1 &&
         error[error.size() - 2] == '.';
}

}  // namespace cordreach::console
