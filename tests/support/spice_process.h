// SPDX-License-Identifier: GPL-3.0-or-later
// One run of `ngspice -b` in a temporary folder.
#pragma once

#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

namespace cordreach::testing {

inline constexpr const char* kSpicePrinted = "answers.txt";  // what it printed

// The contents of that file after the run; empty if ngspice is missing, fails, or does not write it.
inline std::string spiceOutput(const std::string& netlist, const std::string& file = kSpicePrinted) {
  std::string folder = (std::filesystem::temp_directory_path() / "cordreach-spice-XXXXXX").string();
  if (mkdtemp(folder.data()) == nullptr) return {};
  const std::filesystem::path place(folder);
  std::ofstream(place / "network.cir") << netlist;
  const std::string command = "cd '" + folder + "' && ngspice -b network.cir > " + kSpicePrinted + " 2> errors.txt";
  std::string output;
  if (std::system(command.c_str()) == 0) {
    std::ifstream in(place / file);
    output.assign(std::istreambuf_iterator<char>(in), {});
  }
  std::filesystem::remove_all(place);
  return output;
}

}  // namespace cordreach::testing
