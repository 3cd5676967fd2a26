// SPDX-License-Identifier: GPL-3.0-or-later
// docs/console.md shows what the program prints: every block that begins with `$ cordreach` is run and compared.
#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "app/console/support.h"

namespace cordreach::console {
namespace {

struct Sample {
  std::string command;
  std::string shown;
};

std::vector<Sample> samples() {
  std::ifstream document("docs/console.md");
  std::vector<Sample> found;
  bool inside = false;
  for (std::string line; std::getline(document, line);) {
    if (line.rfind("```", 0) == 0) {
      inside = line == "```console";
    } else if (inside && line.rfind("$ ", 0) == 0) {
      found.push_back({line.substr(2), {}});
    } else if (inside && !found.empty()) {
      found.back().shown += line + "\n";
    }
  }
  return found;
}

// As a shell splits it: words apart at spaces, except within double quotes.
std::vector<std::string> wordsOf(const std::string& command) {
  std::vector<std::string> words;
  std::string word;
  bool quoted = false;
  for (const char c : command + " ") {
    if (c == '"') {
      quoted = !quoted;
    } else if (c == ' ' && !quoted) {
      if (!word.empty()) words.push_back(std::exchange(word, {}));
    } else {
      word += c;
    }
  }
  return words;
}

TEST(DocumentedSamples, AreWhatTheProgramPrints) {
  const std::vector<Sample> all = samples();
  EXPECT_GE(all.size(), 6U);
  for (const Sample& sample : all) {
    std::vector<std::string> words = wordsOf(sample.command);
    ASSERT_EQ(words.front(), "cordreach") << sample.command;
    words.erase(words.begin());
    const Ran result = ran(words);
    EXPECT_EQ(result.out + result.error, sample.shown)
        << sample.command << "\ntests/support/refresh_console_samples.py PROGRAM writes them anew";
  }
}

}  // namespace
}  // namespace cordreach::console
