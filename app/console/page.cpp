// SPDX-License-Identifier: GPL-3.0-or-later
// Bold is the only attribute used, and only on a terminal: the word says what a colour would.
#include "console/page.h"

#include <algorithm>

#include "text/severity_text.h"

namespace cordreach::console {

namespace {

constexpr const char* kBold = "\x1b[1m";
constexpr const char* kPlain = "\x1b[0m";

}  // namespace

void Page::heading(const std::string& words) {
  m_text += text::forConsole(text::wrapped(words));
  gap();
}

void Page::rule(const std::string& words) {
  const std::string line = text::forConsole(text::wrapped(words));
  const std::size_t width = std::min(text::columnsOf(line.substr(0, line.find('\n'))), text::kPageWidth);
  m_text += line + std::string(width, '-') + "\n";
}

void Page::verdict(rules::Severity severity, const std::string& words, const text::Indent& indent) {
  const std::string signal = text::signalWord(m_book, severity) + ".";
  std::string said = text::forConsole(text::wrapped(signal + " " + words, indent));
  const std::size_t end = indent.first.size() + signal.size();
  if (m_color) said = indent.first + kBold + signal + kPlain + said.substr(end);
  m_text += said;
}

void Page::paragraph(const std::string& words, const text::Indent& indent) {
  m_text += text::forConsole(text::wrapped(words, indent));
}

void Page::table(const std::vector<text::Column>& columns, const std::vector<std::vector<std::string>>& rows) {
  m_text += text::forConsole(text::tableText(columns, rows));
}

std::string Page::finished() {
  gap();
  paragraph(m_book.say("always"));
  return m_text;
}

}  // namespace cordreach::console
