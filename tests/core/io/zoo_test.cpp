// SPDX-License-Identifier: GPL-3.0-or-later
// Every file of tests/zoo is refused with its code and place, in under a second and without much memory.
#include <gtest/gtest.h>
#include <sys/resource.h>
#include <unistd.h>

#include <chrono>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>

#include "io/json_value.h"
#include "io/site_file.h"
#include "support/test_files.h"

namespace cordreach {
namespace {

using Clock = std::chrono::steady_clock;

struct Refusal {
  std::string code;
  std::string place;
};

std::map<std::string, Refusal> expectedRefusals() {
  std::istringstream stream(testing::fileText("zoo/expected.txt"));
  std::map<std::string, Refusal> refusals;
  for (std::string line; std::getline(stream, line);) {
    if (line.starts_with('#')) continue;
    std::istringstream words(line);
    std::string name;
    Refusal refusal;
    words >> name >> refusal.code >> refusal.place;
    if (refusal.place == "-") refusal.place.clear();
    refusals[name] = refusal;
  }
  return refusals;
}

constexpr double kHangS = 60.0;  // not how fast it is, only that it ends: machines differ

double secondsSince(Clock::time_point start) { return std::chrono::duration<double>(Clock::now() - start).count(); }

// The address sanitizer keeps what was freed for a while, and shadows all of it.
#ifdef __SANITIZE_ADDRESS__
constexpr long kMostMemoryMb = 3000;
#else
constexpr long kMostMemoryMb = 1000;
#endif

long peakMemoryMb() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return usage.ru_maxrss / 1024;
}

TEST(Zoo, EveryFileIsRefusedWithItsCodeAndPlace) {
  for (const auto& [name, refusal] : expectedRefusals()) {
    const auto start = Clock::now();
    const auto read = io::loadSite(testing::testFile("zoo/" + name));
    EXPECT_LT(secondsSince(start), kHangS) << name;
    ASSERT_FALSE(read.ok()) << name;
    EXPECT_EQ(read.error().code, refusal.code) << name;
    EXPECT_EQ(read.error().place, refusal.place) << name;
  }
}

TEST(Zoo, EveryFileHasItsExpectation) {
  const auto refusals = expectedRefusals();
  std::size_t files = 0;
  for (const auto& entry : std::filesystem::directory_iterator(testing::testFile("zoo"))) {
    if (entry.path().extension() != ".json") continue;
    ++files;
    EXPECT_EQ(refusals.count(entry.path().filename().string()), 1u) << entry.path();
  }
  EXPECT_EQ(files, refusals.size());
}

TEST(Zoo, TheGoodOnesAreRead) {
  for (const auto& entry : std::filesystem::directory_iterator(testing::testFile("zoo/good"))) {
    const auto read = io::loadSite(entry.path());
    EXPECT_TRUE(read.ok()) << entry.path() << (read.ok() ? "" : read.error().code + read.error().place);
  }
}

TEST(Zoo, BracketsWithinBracketsAreRefusedAtOnce) {
  const auto start = Clock::now();
  const auto read = io::readSite(std::string(30u << 20, '['));
  ASSERT_FALSE(read.ok());
  EXPECT_EQ(read.error().code, "file.too_deep");
  EXPECT_LT(secondsSince(start), kHangS);
}

TEST(Zoo, AHundredMegabytesOfBracketsAreNotEvenRead) {
  const auto path = std::filesystem::temp_directory_path() / ("brackets-" + std::to_string(::getpid()) + ".json");
  std::ofstream(path) << "[";
  std::filesystem::resize_file(path, 100u << 20);
  const long memoryBefore = peakMemoryMb();
  const auto start = Clock::now();
  const auto read = io::loadSite(path);
  std::filesystem::remove(path);
  ASSERT_FALSE(read.ok());
  EXPECT_EQ(read.error().code, "io.too_large");
  EXPECT_LT(secondsSince(start), kHangS);
  EXPECT_LT(peakMemoryMb() - memoryBefore, 20);
}

TEST(Zoo, EndlessListsOfLittleAreRefusedInTime) {
  std::string text = R"({"version": 1, "id": "x", "junk": [)";
  for (int i = 0; i < 5'000'000; ++i) text += "0,";
  const long memoryBefore = peakMemoryMb();
  const auto start = Clock::now();
  const auto read = io::readSite(text + "0]}");
  ASSERT_FALSE(read.ok());
  EXPECT_EQ(read.error().code, "file.too_many_values");
  EXPECT_EQ(read.error().place, "/junk");
  EXPECT_LT(secondsSince(start), kHangS);
  EXPECT_LT(peakMemoryMb() - memoryBefore, kMostMemoryMb);
}

TEST(Zoo, AnEndlessPipeIsRefused) {
  const auto read = io::loadSite("/dev/zero");
  ASSERT_FALSE(read.ok());
  EXPECT_EQ(read.error().code, "io.too_large");
}

}  // namespace
}  // namespace cordreach
