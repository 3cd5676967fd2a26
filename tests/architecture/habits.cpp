// SPDX-License-Identifier: GPL-3.0-or-later
#include "architecture/habits.h"

#include <algorithm>
#include <regex>

namespace cordreach::architecture {

namespace {

std::vector<std::string> linesThatMatch(const SourceFile& file, const std::regex& pattern, const std::string& fault) {
  std::vector<std::string> faults;
  int number = 1;
  for (auto begin = file.text.begin(); begin != file.text.end(); ++number) {
    const auto end = std::find(begin, file.text.end(), '\n');
    if (std::regex_search(begin, end, pattern)) {
      faults.push_back(file.path + ":" + std::to_string(number) + ": " + fault);
    }
    begin = end == file.text.end() ? end : end + 1;
  }
  return faults;
}

}  // namespace

std::vector<std::string> sizeFaults(const SourceFile& file) {
  const auto lines = std::count(file.text.begin(), file.text.end(), '\n');
  if (lines <= kMostLines) return {};
  return {file.path + ": " + std::to_string(lines) + " lines; does it still hold one idea?"};
}

std::vector<std::string> licenceFaults(const SourceFile& file) {
  static const std::regex pattern(R"(^(#!.*\n)?(//|#|<!--) SPDX-License-Identifier: GPL-3\.0-or-later\b)");
  if (std::regex_search(file.text, pattern, std::regex_constants::match_continuous)) return {};
  return {file.path + ": no SPDX line at the top"};
}

// The patterns are spelled in pieces, so that this file keeps the habits that it checks.
std::vector<std::string> unfinishedFaults(const SourceFile& file) {
  static const std::regex pattern(
      "\\b(TO"
      "DO|FIX"
      "ME|X"
      "XX|HA"
      "CK)\\b|DIS"
      "ABLED_|GTEST_"
      "SKIP");
  return linesThatMatch(file, pattern, "unfinished or switched off");
}

std::vector<std::string> machinePathFaults(const SourceFile& file) {
  static const std::regex pattern(
      "(^|[^A-Za-z0-9_.}])/(wo"
      "rk|ro"
      "ot|tm"
      "p|ho"
      "me)/");
  return linesThatMatch(file, pattern, "a path of one machine");
}

}  // namespace cordreach::architecture
