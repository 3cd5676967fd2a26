// SPDX-License-Identifier: GPL-3.0-or-later
// Turns the command line into one verb's work, and what the command line library finds wrong into our own sentence.
#include "console/console.h"

#include <CLI/CLI.hpp>
#include <algorithm>

#include "console/verbs.h"
#include "text/columns.h"
#include "text/error_text.h"

namespace cordreach::console {

namespace {

constexpr const char* kVersionLine = "cordreach " CORDREACH_VERSION "\n";
constexpr std::size_t kHelpColumn = 26;

std::string verbNames() {
  std::string names;
  for (const Verb& verb : verbs()) names += (names.empty() ? "" : ", ") + std::string(verb.name);
  return names;
}

// The verb whose options were being read when the line stopped making sense; none before a verb was named.
const CLI::App* chosen(const CLI::App& program) {
  const CLI::App* at = &program;
  while (!at->get_subcommands().empty()) at = at->get_subcommands().front();
  return at == &program ? nullptr : at;
}

std::string fullName(const CLI::App& command) {
  const CLI::App* parent = command.get_parent();
  return parent == nullptr || parent->get_parent() == nullptr ? command.get_name()
                                                              : fullName(*parent) + " " + command.get_name();
}

// "--amps: 1 required" and the like: the option is what stands before the colon.
std::string optionIn(const std::string& detail) {
  return detail.substr(0, std::min(detail.find(':'), detail.find(' ')));
}

base::Error usageError(const CLI::ParseError& error, const CLI::App& program) {
  const CLI::App* verb = chosen(program);
  const std::string name = verb == nullptr ? std::string{} : fullName(*verb);
  const std::vector<std::string> unread = program.remaining(true);
  switch (static_cast<CLI::ExitCodes>(error.get_exit_code())) {
    case CLI::ExitCodes::ExtrasError:
      if (verb == nullptr && !unread.empty()) {
        return {"usage.unknown_verb", unread.front(), {{"verbs", verbNames()}}};
      }
      if (!unread.empty()) return {"usage.unknown_option", unread.front(), {{"verb", name}}};
      break;
    case CLI::ExitCodes::RequiredError:
      return {"usage.missing_option",
              "",
              {{"verb", name.empty() ? "cordreach" : name}, {"option", optionIn(error.what())}}};
    case CLI::ExitCodes::ArgumentMismatch:
      return {"usage.missing_value", "", {{"option", optionIn(error.what())}}};
    default:
      break;
  }
  std::string detail = error.what();
  std::replace(detail.begin(), detail.end(), '\n', ' ');
  return {"usage.unreadable", "", {{"detail", detail}}};
}

void declareVerbs(CLI::App& program, Work& work) {
  for (const Verb& verb : verbs()) {
    CLI::App* command = program.add_subcommand(verb.name, verb.summary);
    command->get_formatter()->column_width(kHelpColumn);
    if (const Work declared = verb.declare(*command, work)) {
      command->callback([&work, declared] { work = declared; });
    }
  }
}

std::string helpOf(const CLI::App& program) {
  const CLI::App* verb = chosen(program);
  return verb == nullptr ? welcome()
                         : verb->help("cordreach " + (verb->get_parent()->get_parent() == nullptr
                                                          ? std::string{}
                                                          : verb->get_parent()->get_name()));
}

}  // namespace

int Console::answer(const std::string& text, int exit) const {
  if (out.write(text)) return exit;
  return refuse({"output.failed", "", {{"detail", out.fault()}}});
}

int Console::refuseSentence(const std::string& sentence) const {
  errors.write(text::forConsole("cordreach: " + sentence + ".\n"));
  return kBadInput;
}

int Console::refuse(const base::Error& error) const { return refuseSentence(text::errorSentence(book, error)); }

int Console::refuse(const std::string& option, const base::Error& error) const {
  return refuseSentence(book.say("error.option", {{"option", option}, {"sentence", text::errorSentence(book, error)}}));
}

int Console::refuseFile(const std::string& file, const base::Error& error) const {
  return refuseSentence(text::errorSentenceIn(book, file, error));
}

std::string welcome() {
  std::string text = kVersionLine;
  text += "Which outlet, breaker and cord will carry the job, and what to change.\n\nVerbs:\n";
  for (const Verb& verb : verbs()) {
    std::string name = verb.name;
    name.resize(std::max<std::size_t>(name.size() + 1, 10), ' ');
    text += text::wrapped(verb.summary, {"  " + name, std::string(12, ' ')});
  }
  return text + "\n\"cordreach VERB --help\" shows what a verb takes.\n";
}

std::optional<int> run(const std::vector<std::string>& arguments, const Console& console) {
  CLI::App program{"Which outlet, breaker and cord will carry the job, and what to change", "cordreach"};
  program.require_subcommand(0, 1);
  bool wantsVersion = false;
  bool probeDisplay = false;
  program.add_flag("--version", wantsVersion, "The version of this program");
  program.add_flag("--probe-display", probeDisplay)->group("");
  Work work;
  declareVerbs(program, work);
  bool wantsHelp = false;
  program.add_subcommand("help", "Lists the verbs")->callback([&wantsHelp] { wantsHelp = true; });

  try {
    program.parse(std::vector<std::string>(arguments.rbegin(), arguments.rend()));
  } catch (const CLI::CallForHelp&) {
    return console.answer(helpOf(program), kSound);
  } catch (const CLI::ParseError& error) {
    return console.refuse(usageError(error, program));
  }
  if (wantsVersion) return console.answer(kVersionLine, kSound);
  if (wantsHelp) return console.answer(welcome(), kSound);
  if (probeDisplay) return console.windowCanOpen && console.windowCanOpen() ? 0 : 1;
  if (!work) return std::nullopt;
  return work(console);
}

}  // namespace cordreach::console
