// SPDX-License-Identifier: GPL-3.0-or-later
// Reads phrases by recursive descent; branches hold phrases again.
#include "text/phrase.h"

#include <algorithm>
#include <cctype>
#include <optional>

namespace cordreach::text {

namespace {

bool isNameCharacter(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_'; }

class Reader {
 public:
  explicit Reader(std::string_view text) : m_text(text) {}

  PhraseParts readAll() {
    PhraseParts parts = readParts(false);
    if (!m_fault && m_at < m_text.size()) m_fault = "phrase.unexpected_close";
    return parts;
  }

  [[nodiscard]] const std::optional<std::string>& fault() const { return m_fault; }

 private:
  [[nodiscard]] bool atEnd() const { return m_at >= m_text.size() || m_fault; }

  // Inside a branch the words end at `|` and `}`; outside only `{` is special.
  PhraseParts readParts(bool inBranch) {
    PhraseParts parts;
    std::string words;
    const auto flush = [&] {
      if (!words.empty()) parts.push_back({PartKind::Words, std::exchange(words, {}), {}});
    };
    while (!atEnd()) {
      const char c = m_text[m_at];
      if (c == '}' || (inBranch && c == '|')) break;
      ++m_at;
      if (c != '{') {
        words += c;
        continue;
      }
      flush();
      parts.push_back(readPlaceholder());
    }
    flush();
    return parts;
  }

  PhrasePart readPlaceholder() {
    PhrasePart part{PartKind::Value, readName(), {}};
    if (part.text.empty()) m_fault = "phrase.empty_name";
    if (!atEnd() && m_text[m_at] == '?') part.kind = PartKind::IfPresent;
    if (!atEnd() && m_text[m_at] == '|') part.kind = PartKind::Select;
    while (!atEnd() && m_text[m_at] != '}') {
      ++m_at;
      part.branches.push_back({part.kind == PartKind::Select ? readKey() : std::string{}, readParts(true)});
    }
    if (m_at >= m_text.size()) m_fault = "phrase.unclosed";
    ++m_at;
    return part;
  }

  std::string readName() {
    const std::size_t from = m_at;
    while (m_at < m_text.size() && isNameCharacter(m_text[m_at])) ++m_at;
    return std::string(m_text.substr(from, m_at - from));
  }

  // `induction:` names a branch, a dotted code too; words that happen to hold a colon later on do not.
  std::string readKey() {
    const std::size_t from = m_at;
    while (m_at < m_text.size() && (isNameCharacter(m_text[m_at]) || m_text[m_at] == '.')) ++m_at;
    std::string key(m_text.substr(from, m_at - from));
    if (!key.empty() && m_at < m_text.size() && m_text[m_at] == ':') {
      ++m_at;
      return key;
    }
    m_at = from;
    return {};
  }

  std::string_view m_text;
  std::size_t m_at = 0;
  std::optional<std::string> m_fault;
};

void collect(const PhraseParts& parts, std::set<std::string>& names) {
  for (const PhrasePart& part : parts) {
    if (part.kind != PartKind::Words) names.insert(part.text);
    for (const PhraseBranch& branch : part.branches) collect(branch.parts, names);
  }
}

}  // namespace

base::Result<Phrase> Phrase::parse(std::string_view text) {
  Reader reader(text);
  PhraseParts parts = reader.readAll();
  if (reader.fault()) return base::Error{*reader.fault(), std::string(text), {}};
  return Phrase(std::move(parts));
}

std::set<std::string> Phrase::argumentNames() const {
  std::set<std::string> names;
  collect(m_parts, names);
  return names;
}

}  // namespace cordreach::text
