// SPDX-License-Identifier: GPL-3.0-or-later
// Files that tests read: every test runs in the top folder of the source tree.
#pragma once

#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>

namespace cordreach::testing {

// A path under tests/.
[[nodiscard]] inline std::filesystem::path testFile(const std::string& name) {
  return std::filesystem::path("tests") / name;
}

[[nodiscard]] inline std::string fileText(const std::filesystem::path& path) {
  std::ifstream stream(path.is_absolute() ? path : testFile(path.string()), std::ios::binary);
  if (!stream) throw std::runtime_error("cannot read " + path.string());
  return std::string(std::istreambuf_iterator<char>(stream), {});
}

}  // namespace cordreach::testing
