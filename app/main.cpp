// SPDX-License-Identifier: GPL-3.0-or-later
// The program's edge: reads the command line, runs one verb, and is the only place that catches our own bugs.
#include <CLI/CLI.hpp>
#include <cstdio>
#include <exception>
#include <string>

#include "console/display.h"
#include "console/verbs.h"

namespace {

constexpr int kSound = 0;
constexpr int kNoDisplay = 1;
constexpr int kBadUsage = 2;
constexpr int kOwnBug = 70;

constexpr bool kHasWindow = CORDREACH_HAS_WINDOW != 0;

int usageError(const CLI::ParseError& error, const CLI::App& program) {
  if (error.get_exit_code() == static_cast<int>(CLI::ExitCodes::Success)) return program.exit(error);
  std::fprintf(stderr, "cordreach: %s\n", error.what());
  return kBadUsage;
}

int run(int argumentCount, char** arguments) {
  CLI::App program{"Which outlet, breaker and cord will carry the job, and what to change", "cordreach"};
  program.set_version_flag("--version", "cordreach " CORDREACH_VERSION);
  program.require_subcommand(0, 1);
  bool probeDisplay = false;
  program.add_flag("--probe-display", probeDisplay, "Exit 0 if a window could be opened here, else 1");

  cordreach::console::Work work;
  for (const cordreach::console::Verb& verb : cordreach::console::verbs()) {
    CLI::App* command = program.add_subcommand(verb.name, verb.summary);
    command->callback([&work, run = verb.declare(*command)] { work = run; });
  }

  try {
    program.parse(argumentCount, arguments);
  } catch (const CLI::ParseError& error) {
    return usageError(error, program);
  }
  if (probeDisplay) return kHasWindow && cordreach::console::displayAnswers() ? kSound : kNoDisplay;
  if (work) return work();
  std::printf("cordreach %s\n%s", CORDREACH_VERSION, program.help().c_str());
  return kSound;
}

}  // namespace

int main(int argumentCount, char** arguments) {
  try {
    return run(argumentCount, arguments);
  } catch (const std::exception& failure) {
    std::fprintf(stderr, "cordreach: a defect of the program: %s\n", failure.what());
    return kOwnBug;
  }
}
