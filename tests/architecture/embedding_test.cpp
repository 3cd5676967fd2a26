// SPDX-License-Identifier: GPL-3.0-or-later
// What cmake/embed.cmake compiles in is the file, byte for byte, with everything that CMake's own language would eat.
#include <gtest/gtest.h>

#include <algorithm>
#include <span>
#include <string_view>
#include <utility>

#include "architecture/source_tree.h"

namespace cordreach::architecture {

std::span<const std::pair<std::string_view, std::string_view>> embeddedSamples();

namespace {

std::string_view embedded(std::string_view name) {
  const auto samples = embeddedSamples();
  const auto found =
      std::find_if(samples.begin(), samples.end(), [&](const auto& sample) { return sample.first == name; });
  EXPECT_NE(found, samples.end()) << name;
  return found == samples.end() ? std::string_view() : found->second;
}

TEST(Embedding, KeepsSemicolonsBracketsBackslashesAndQuotes) {
  const std::string text = readFile("tests/architecture/samples/awkward.csv").text;
  ASSERT_FALSE(text.empty());
  EXPECT_EQ(embedded("awkward"), text);
}

TEST(Embedding, KeepsALongFileWhole) {
  const std::string text = readFile(CORDREACH_LONG_SAMPLE).text;
  ASSERT_GT(text.size(), 100'000U);
  EXPECT_EQ(embedded("long_sample"), text);
}

TEST(Embedding, KeepsAnEmptyFile) { EXPECT_EQ(embedded("empty"), ""); }

TEST(Embedding, AnswersEachFileOnce) { EXPECT_EQ(embeddedSamples().size(), 3U); }

}  // namespace
}  // namespace cordreach::architecture
