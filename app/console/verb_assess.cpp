// SPDX-License-Identifier: GPL-3.0-or-later
// One site after the other, each written as soon as it is answered, so that thousands stream through in little memory.
#include "console/verb_assess.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>

#include "console/assess_json.h"
#include "console/assess_page.h"
#include "console/console.h"

namespace cordreach::console {

namespace {

struct AssessOptions {
  std::vector<std::string> sites;
  std::string language;
  bool json = false;
};

class Assessing {
 public:
  Assessing(const AssessOptions& options, const Console& console) : m_options(options), m_console(console) {}

  int run() {
    int worst = kSound;
    bool first = true;
    for (const std::string& path : m_options.sites) {
      const int exit = one(path, first);
      worst = std::max(worst, exit);
      if (m_outputFailed) return kBadInput;
      first = false;
    }
    return worst;
  }

 private:
  [[nodiscard]] bool several() const { return m_options.sites.size() > 1; }

  int one(const std::string& path, bool first) {
    const base::Result<SiteAnswer> answer = answerSite(path);
    if (!answer) return refused(path, answer.error());
    const int exit = answer.value().worst() >= rules::Severity::Caution ? kUnsound : kSound;
    if (m_options.json) return write(assessJson(path, answer.value(), m_console.book), exit);
    const std::string page = assessPage(answer.value(), m_console.book, m_console.color);
    return write(first ? page : "\n" + page, exit);
  }

  // Among several sites a reader of lines must find the bad one in its place; alone, nothing but the sentence is said.
  int refused(const std::string& path, const base::Error& error) {
    if (m_options.json && several()) return write(assessErrorJson(path, error, m_console.book), kBadInput);
    return m_console.refuseFile(path, error);
  }

  int write(const std::string& text, int exit) {
    const int written = m_console.answer(text, exit);
    m_outputFailed = written != exit;
    return written;
  }

  const AssessOptions& m_options;
  const Console& m_console;
  bool m_outputFailed = false;
};

int runAssess(const AssessOptions& options, const Console& console) {
  if (options.language.empty()) return Assessing(options, console).run();
  base::Result<text::Phrasebook> book = text::Phrasebook::load(options.language, console.book.locale().units);
  if (!book) return console.refuse("--language", book.error());
  Console translated = console;
  translated.book = std::move(book).value();
  return Assessing(options, translated).run();
}

}  // namespace

Work declareAssess(CLI::App& command, Work& /*work*/) {
  const auto options = std::make_shared<AssessOptions>();
  command.add_option("SITE", options->sites, "Site files")->required();
  command.add_flag("--json", options->json, "One line of JSON a site");
  command.add_option("--language", options->language, "Language of the words: en");
  return [options](const Console& console) { return runAssess(*options, console); };
}

}  // namespace cordreach::console
