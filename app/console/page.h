// SPDX-License-Identifier: GPL-3.0-or-later
// What the pages of all verbs share: the verdict at the head, sentences under it, tables, the line that always stands
// at the end.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "rules/finding.h"
#include "text/columns.h"
#include "text/phrasebook.h"

namespace cordreach::console {

class Page {
 public:
  Page(const text::Phrasebook& book, bool color) : m_book(book), m_color(color) {}

  void heading(const std::string& words);
  // A heading within the page, underlined.
  void rule(const std::string& words);
  // The signal word, then what it says.
  void verdict(rules::Severity severity, const std::string& words, const text::Indent& indent = {});
  void paragraph(const std::string& words, const text::Indent& indent = {});
  void table(const std::vector<text::Column>& columns, const std::vector<std::vector<std::string>>& rows);
  void gap() { m_text += "\n"; }
  // Ends the page by the line under every verdict.
  [[nodiscard]] std::string finished();

 private:
  const text::Phrasebook& m_book;
  bool m_color;
  std::string m_text;
};

}  // namespace cordreach::console
