// SPDX-License-Identifier: GPL-3.0-or-later
// The table of codes against the sources: a code that is given is listed, a code that is listed is given.
#include "io/error_codes.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <regex>
#include <set>

#include "support/test_files.h"

namespace cordreach {
namespace {

std::set<std::string> codesInSources() {
  std::set<std::string> codes;
  const std::regex quoted("\"((?:file|site|edit|io)\\.[a-z_0-9]+)\"");
  for (const char* folder : {"core/site", "core/io"}) {
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
      if (entry.path().filename() == "error_codes.h") continue;
      const std::string text = testing::fileText(std::filesystem::absolute(entry.path()));
      for (std::sregex_iterator match(text.begin(), text.end(), quoted), end; match != end; ++match) {
        codes.insert((*match)[1]);
      }
    }
  }
  return codes;
}

TEST(ErrorCodes, AreThoseOfTheSources) {
  std::set<std::string> listed;
  for (const auto& entry : io::kErrorCodes) EXPECT_TRUE(listed.insert(std::string(entry.code)).second) << entry.code;
  EXPECT_EQ(listed, codesInSources());
}

}  // namespace
}  // namespace cordreach
