// SPDX-License-Identifier: GPL-3.0-or-later
#include "architecture/source_tree.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace cordreach::architecture {

SourceFile readFile(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  if (!file) throw std::runtime_error("can't read " + path + "; the tests run in the root of the source tree");
  return {path, {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()}};
}

std::vector<SourceFile> filesBelow(const std::string& folder, const std::vector<std::string>& endings) {
  std::vector<SourceFile> files;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
    if (!entry.is_regular_file()) continue;
    const std::string path = entry.path().generic_string();
    const bool wanted =
        std::any_of(endings.begin(), endings.end(), [&](const auto& end) { return path.ends_with(end); });
    if (wanted) files.push_back(readFile(path));
  }
  std::sort(files.begin(), files.end(), [](const auto& left, const auto& right) { return left.path < right.path; });
  return files;
}

}  // namespace cordreach::architecture
