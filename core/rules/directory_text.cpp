// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/directory_text.h"

#include <algorithm>
#include <cctype>
#include <vector>

namespace cordreach::rules {

namespace {

bool isDigit(char c) { return std::isdigit(static_cast<unsigned char>(c)) != 0; }
bool isWordPart(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0; }

std::string upper(std::string_view text) {
  std::string result;
  for (const char c : text) result += static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
  return result;
}

std::vector<std::string> wordsOf(std::string_view text) {
  std::vector<std::string> words(1);
  for (const char c : upper(text)) {
    if (isWordPart(c)) {
      words.back() += c;
    } else if (!words.back().empty()) {
      words.emplace_back();
    }
  }
  if (words.back().empty()) words.pop_back();
  return words;
}

bool isNumber(std::string_view word) { return !word.empty() && std::all_of(word.begin(), word.end(), isDigit); }

std::string withoutZeros(std::string_view number) {
  const std::size_t first = number.find_first_not_of('0');
  return std::string(first == std::string_view::npos ? "0" : number.substr(first));
}

// A panel's name, or one with the number run into it.
bool readPanel(const std::string& word, const std::set<std::string>& panels, DirectoryText& read) {
  for (const std::string& panel : panels) {
    const std::string name = upper(panel);
    if (word == name) {
      read.panel = panel;
      return true;
    }
    if (!name.empty() && !isDigit(name.back()) && word.starts_with(name) && isNumber(word.substr(name.size()))) {
      read.panel = panel;
      read.numbers.insert(withoutZeros(word.substr(name.size())));
      return true;
    }
  }
  return false;
}

}  // namespace

DirectoryText readDirectory(std::string_view text, const std::set<std::string>& panels) {
  DirectoryText read;
  for (const std::string& word : wordsOf(text)) {
    if (read.panel.empty() && readPanel(word, panels, read)) continue;
    if (isNumber(word)) read.numbers.insert(withoutZeros(word));
  }
  return read;
}

}  // namespace cordreach::rules
