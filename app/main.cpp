// SPDX-License-Identifier: GPL-3.0-or-later
// The program's edge: runs one verb or opens the window, and is the only place that catches our own bugs.
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <exception>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "console/console.h"
#include "console/display.h"
#include "console/verbs.h"
#if CORDREACH_HAS_WINDOW
#include "shell/launch.h"
#endif

namespace {

using namespace cordreach;
using Words = std::vector<std::string>;

constexpr bool kHasWindow = CORDREACH_HAS_WINDOW != 0;

bool wantsColor() { return isatty(STDOUT_FILENO) == 1 && std::getenv("NO_COLOR") == nullptr; }

bool isSet(const char* variable) {
  const char* value = std::getenv(variable);
  return value != nullptr && *value != '\0';
}

bool windowCanOpen() { return isSet("QT_QPA_PLATFORM") || isSet("WAYLAND_DISPLAY") || console::displayAnswers(); }

// `cordreach FILE`: a single word that is no verb and no option, and names a file.
std::optional<std::string> fileToOpen(const Words& words) {
  if (!kHasWindow || words.size() != 1 || words.front().empty() || words.front().front() == '-') return std::nullopt;
  const auto isVerb = [&](const console::Verb& verb) { return words.front() == verb.name; };
  const auto verbs = console::verbs();
  std::error_code ignored;
  if (std::any_of(verbs.begin(), verbs.end(), isVerb) || words.front() == "help") return std::nullopt;
  return std::filesystem::exists(words.front(), ignored) ? std::optional(words.front()) : std::nullopt;
}

#if CORDREACH_HAS_WINDOW
// A program that still lies where it was built.
bool isInSourceTree() {
  std::error_code fault;
  const std::filesystem::path program = std::filesystem::read_symlink("/proc/self/exe", fault);
  return !fault && std::filesystem::exists(program.parent_path().parent_path() / "CMakeCache.txt", fault);
}
#endif

int run(int argumentCount, char** arguments) {
  const Words words(arguments + 1, arguments + argumentCount);
  console::StreamOutput out(stdout);
  console::StreamOutput error(stderr);
  const console::Console console{out, error, wantsColor(), text::Phrasebook::load("en").value(),
                                 kHasWindow ? windowCanOpen : nullptr};
  const std::optional<std::string> file = fileToOpen(words);
  if (!file) {
    if (const auto exit = console::run(words, console)) return *exit;
  }
#if CORDREACH_HAS_WINDOW
  if (windowCanOpen()) return app::runWindow(argumentCount, arguments, {file.value_or(""), isInSourceTree()});
  if (file) return console.refuse({"window.no_display", "", {}});
#endif
  return console.answer(console::welcome(), console::kSound);
}

}  // namespace

int main(int argumentCount, char** arguments) {
  // A reader that goes away is told by the failing write, not by the end of the process.
  std::signal(SIGPIPE, SIG_IGN);
  try {
    return run(argumentCount, arguments);
  } catch (const std::exception& failure) {
    std::fprintf(stderr, "cordreach: a defect of the program: %s\n", failure.what());
    return cordreach::console::kOwnBug;
  }
}
