// SPDX-License-Identifier: GPL-3.0-or-later
// The program's edge: runs one verb, and is the only place that catches our own bugs.
#include <unistd.h>

#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <exception>
#include <string>
#include <vector>

#include "console/console.h"
#include "console/display.h"

namespace {

constexpr bool kHasWindow = CORDREACH_HAS_WINDOW != 0;

bool wantsColor() { return isatty(STDOUT_FILENO) == 1 && std::getenv("NO_COLOR") == nullptr; }

int run(const std::vector<std::string>& arguments) {
  using namespace cordreach;
  console::StreamOutput out(stdout);
  console::StreamOutput error(stderr);
  const console::Console console{out, error, wantsColor(), text::Phrasebook::load("en").value(),
                                 kHasWindow ? console::displayAnswers : nullptr};
  if (const auto exit = console::run(arguments, console)) return *exit;
  return console.answer(console::welcome(), console::kSound);
}

}  // namespace

int main(int argumentCount, char** arguments) {
  // A reader that goes away is told by the failing write, not by the end of the process.
  std::signal(SIGPIPE, SIG_IGN);
  try {
    return run({arguments + 1, arguments + argumentCount});
  } catch (const std::exception& failure) {
    std::fprintf(stderr, "cordreach: a defect of the program: %s\n", failure.what());
    return cordreach::console::kOwnBug;
  }
}
