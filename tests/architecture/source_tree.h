// SPDX-License-Identifier: GPL-3.0-or-later
// The files of the source tree with their text, read from the working directory.
#pragma once

#include <string>
#include <vector>

namespace cordreach::architecture {

struct SourceFile {
  std::string path;  // from the root of the tree, with slashes
  std::string text;
};

// All files below the folder whose name ends in one of the endings, ordered by path.
std::vector<SourceFile> filesBelow(const std::string& folder, const std::vector<std::string>& endings);

SourceFile readFile(const std::string& path);

}  // namespace cordreach::architecture
